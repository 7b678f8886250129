import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawFrom, type Draw } from "../geometry/draw.fixture.ts";
import { berthPlaces } from "./berth-places.ts";
import type { Obstacle } from "./obstacle.ts";
import type { Places, PlacesInput } from "./places-types.ts";
import { roomFor } from "./position-room.ts";
import { woods } from "./wood.fixture.ts";

/** A point somewhere within so far of another. */
function strayed(draw: Draw, x: number, y: number, errorM: number): readonly [number, number] {
  const angle = (draw(0, 359) * Math.PI) / 180;
  const awayM = (errorM * draw(0, 100)) / 100;
  return [x + awayM * Math.cos(angle), y + awayM * Math.sin(angle)];
}

/** The same wood with every stem and every obstacle somewhere else within the error. */
function shaken(wood: PlacesInput, errorM: number, seed: number): PlacesInput {
  const draw = drawFrom(seed);
  return {
    ...wood,
    trees: wood.trees.map((tree) => {
      const [xM, yM] = strayed(draw, tree.xM, tree.yM, errorM);
      return { ...tree, xM, yM };
    }),
    obstacles: wood.obstacles.map((obstacle): Obstacle => {
      if (obstacle.shape.type !== "point") return obstacle;
      const [x, y] = obstacle.shape.at;
      return { ...obstacle, shape: { type: "point", at: strayed(draw, x, y, errorM) } };
    }),
  };
}

function keyOf({ first, second }: { readonly first: number; readonly second: number }): string {
  return `${Math.min(first, second)} ${Math.max(first, second)}`;
}

function keys({ places, conflicts }: Places): {
  readonly places: Set<string>;
  readonly apart: (a: string, b: string) => boolean;
} {
  const list = places.map(keyOf);
  const against = new Set(conflicts.flatMap(([a, b]) => [`${list[a]}/${list[b]}`, `${list[b]}/${list[a]}`]));
  return { places: new Set(list), apart: (a, b) => !against.has(`${a}/${b}`) };
}

const SHAKEN = fc.tuple(woods(), fc.noBias(fc.nat({ max: 99_999 }))).map(([wood, seed]) => {
  const draw = drawFrom(seed);
  const errorM = draw(1, 25) / 100;
  const fire: Obstacle = {
    id: "fire",
    kind: "fire",
    shape: { type: "point", at: [draw(0, 14), draw(0, 14)] },
    setbackM: draw(0, 3),
  };
  const known: PlacesInput = { ...wood, spanMaxM: 6, obstacles: [fire] };
  return { known, errorM, real: shaken(known, errorM, seed) };
});

describe("places when positions may be off", () => {
  it("keeps only places that serve wherever all really stands, and only pairs of them that go together there", () => {
    let kept = 0;
    fc.assert(
      fc.property(SHAKEN, ({ known, errorM, real }) => {
        const sure = keys(berthPlaces({ ...known, offM: errorM }));
        const there = keys(berthPlaces(real));
        for (const place of sure.places) {
          kept++;
          expect(there.places).toContain(place);
          for (const other of sure.places) {
            if (other < place && sure.apart(place, other)) expect(there.apart(place, other)).toBe(true);
          }
        }
      }),
      { seed: 1, numRuns: 400 },
    );
    expect(kept).toBeGreaterThan(300);
  });

  it("leaves out no place that serves somewhere, nor a pair of them that goes together there", () => {
    let found = 0;
    fc.assert(
      fc.property(SHAKEN, ({ known, errorM, real }) => {
        const maybe = keys(berthPlaces({ ...known, offM: -errorM }));
        const there = keys(berthPlaces(real));
        for (const place of there.places) {
          found++;
          expect(maybe.places).toContain(place);
          for (const other of there.places) {
            if (other < place && there.apart(place, other)) expect(maybe.apart(place, other)).toBe(true);
          }
        }
      }),
      { seed: 2, numRuns: 400 },
    );
    expect(found).toBeGreaterThan(1000);
  });

  it("gives no room where nothing is off", () => {
    const [wood] = fc.sample(woods(), { seed: 3, numRuns: 1 });
    if (wood === undefined) throw new Error("no wood was drawn");
    expect(roomFor({ ...wood, offM: 0 })).toEqual({ spanM: 0, aroundM: 0, betweenM: 0 });
    expect(berthPlaces({ ...wood, offM: 0 })).toEqual(berthPlaces(wood));
  });
});
