import { describe, expect, it } from "vitest";
import type { Camp } from "../plan/camp.ts";
import { campPlaces } from "./camp-places.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { at, camp, pair } from "./testing/camp.fixture.ts";

function placesOf({ ground, rules }: Camp): CampPlaces {
  if (ground === undefined) throw new Error("this camp has no ground");
  return campPlaces(ground, rules);
}

function names({ anchors, places }: CampPlaces): string[] {
  return places.map(({ first, second }) => `${anchors[first]?.id ?? "?"}-${anchors[second]?.id ?? "?"}`);
}

describe("campPlaces", () => {
  it("offers the pairs of the map whose span the rules allow", () => {
    const found = placesOf(camp().trees(at(0, 0), at(4.2, 0), at(20, 0)).build());
    expect(names(found)).toEqual(["T01-T02"]);
    expect(found.funnel).toMatchObject({ trees: 3, usable: 3, pairs: 1 });
  });

  it("offers stated pairs just as well, and keeps apart those that are too near each other", () => {
    const found = placesOf(
      camp()
        .pairs(pair("p2", ["C", "D"]), pair("p1", ["B", "A"], { tooNear: ["p2"] }))
        .build(),
    );
    expect(names(found)).toEqual(["A-B", "C-D"]);
    expect(found.conflicts).toEqual([[0, 1]]);
    expect(found.funnel).toMatchObject({ trees: 4, usable: 4, pairs: 2 });
  });

  it("turns a stated pair into the order of ids, with its fall and bearing", () => {
    const found = placesOf(
      camp()
        .pairs(pair("p", ["B", "A"], { fallM: 0.3, bearingRad: Math.PI / 2, dbhM: [0.4, 0.2] }))
        .build(),
    );
    expect(found.places[0]).toMatchObject({ fallM: -0.3, dbhM: [0.2, 0.4] });
    expect(found.places[0]?.bearingRad).toBeCloseTo((3 * Math.PI) / 2, 12);
  });

  it("leaves out pairs with thin trunks or a span outside the rules, but not those nobody measured", () => {
    const found = placesOf(
      camp()
        .pairs(
          pair("thin", ["A", "B"], { dbhM: [0.3, 0.15] }),
          pair("far", ["C", "D"], { spanM: 5.2 }),
          pair("assumed", ["E", "F"], { dbhM: [0.15, 0.15], dbhAssumed: true }),
        )
        .build(),
    );
    expect(names(found)).toEqual(["E-F"]);
  });

  it("takes a stated pair of two mapped trees for that pair of the map, with the stated span", () => {
    const found = placesOf(
      camp()
        .trees(at(0, 0, { id: "A", tag: "blue 1" }), at(4.2, 0, { id: "B", tag: "blue 2" }))
        .pairs(pair("p", ["blue 1", "blue 2"], { spanM: 4.05 }))
        .build(),
    );
    expect(names(found)).toEqual(["A-B"]);
    expect(found.places[0]).toMatchObject({ spanM: 4.05, pair: "p" });
    expect(found.funnel.trees).toBe(2);
  });

  it("does not let a stated pair get round what blocks it on the map", () => {
    const found = placesOf(
      camp()
        .trees(
          at(0, 0, { id: "A" }),
          at(4.2, 0, { id: "B" }),
          at(2, 3, { id: "dead", condition: "dead", heightM: 12 }),
        )
        .pairs(pair("p", ["A", "B"]))
        .build(),
    );
    expect(found.places).toEqual([]);
    expect(found.funnel.blockedBy["dead-tree"]).toBe(1);
  });

  it("shares a mapped tree with a stated pair that reaches off the map", () => {
    const found = placesOf(
      camp()
        .trees(at(0, 0, { id: "A" }), at(4.2, 0, { id: "B" }))
        .pairs(pair("p", ["B", "Z"]))
        .build(),
    );
    expect(names(found)).toEqual(["A-B", "B-Z"]);
    const [map, stated] = found.places;
    expect(map?.second).toBe(stated?.first);
  });

  it("lets two stated pairs of the same two trees exclude each other", () => {
    const found = placesOf(
      camp()
        .pairs(pair("p", ["A", "B"]), pair("q", ["B", "A"]), pair("r", ["A", "B"]))
        .build(),
    );
    expect(found.conflicts).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
  });

  it("knows the fall from elevations, else from the slope of the site, else not at all", () => {
    const trees = [at(0, 0, { elevationM: 10 }), at(0, 4, { elevationM: 9.5 })] as const;
    expect(
      placesOf(
        camp()
          .trees(...trees)
          .build(),
      ).places[0]?.fallM,
    ).toBeCloseTo(0.5, 12);
    const flat = camp().trees(at(0, 0), at(0, 4));
    expect(placesOf(flat.build()).places[0]?.fallM).toBeUndefined();
    const north = flat.ground({ slope: { riseRatio: 0.1, downhillRad: 0 } }).build();
    expect(placesOf(north).places[0]?.fallM).toBeCloseTo(0.4, 12);
  });

  it("says that pairs of trees from GPS are to be stepped out", () => {
    const found = placesOf(camp().trees(at(0, 0), at(4, 0)).ground({ source: "gps" }).build());
    expect(found.places[0]?.stepItOut).toBe(true);
  });
});
