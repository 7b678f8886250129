import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Camp } from "../plan/camp.ts";
import { hang } from "../statics/hang.ts";
import { allowedPlaces } from "./allowed-places.ts";
import { campPlaces } from "./camp-places.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { chooseBerths, type ChosenBerths } from "./choose-berths.ts";
import { costTerms, placeCosts } from "./cost-terms.ts";
import { dealKit } from "./deal-kit.ts";
import { fitClasses } from "./fit-classes.ts";
import { HangDesk } from "./hang-desk.ts";
import { hangKit, hangLimits, hangPair } from "./hang-request.ts";
import { WOOD } from "./testing/wood.fixture.ts";

function chosen(wood: Camp, mostQuestions: number): ChosenBerths {
  const ground = placesOf(wood);
  const classes = fitClasses(dealt(wood), wood);
  const desk = new HangDesk(ground.places, classes);
  const { allowed } = allowedPlaces(ground.places, classes, desk, mostQuestions);
  const costUnits = placeCosts(ground.places, costTerms(wood.rules.spanIdealM.value));
  return chooseBerths({ ground, capacity: 1, classes, allowed, costUnits, desk });
}

function placesOf({ ground, rules }: Camp): CampPlaces {
  if (ground === undefined) throw new Error("a wood has ground");
  return campPlaces(ground, rules);
}

function dealt({ sleepers, kit }: Camp) {
  return dealKit(sleepers, kit, 0).dealt;
}

describe("chooseBerths", () => {
  it("places as many, for as little, as trying everything with every sleeper's own hang", () => {
    let refused = 0;
    fc.assert(
      fc.property(WOOD, (wood) => {
        const { places, conflicts } = placesOf(wood);
        fc.pre(places.length <= 12);
        const serves = dealt(wood).map((kit) => {
          const request = hangKit(kit, hangLimits(wood, kit.sleeper.statureM));
          return places.map((place) => hang({ ...request, ...hangPair(place) }).ok);
        });
        refused += serves.flat().filter((ok) => !ok).length;
        const { search } = chosen(wood, Infinity);
        const excluded = new Set(conflicts.map(([a, b]) => `${a} ${b}`));
        const costs = placeCosts(places, costTerms(4));
        const apart = (a: number, b: number): boolean => {
          const [one, other] = [places[a], places[b]];
          if (one === undefined || other === undefined || excluded.has(`${a} ${b}`)) return false;
          return ![one.first, one.second].some((tree) => tree === other.first || tree === other.second);
        };
        expect([search.placed, search.costUnits]).toEqual(best(serves, costs, apart));
      }),
      { seed: 2, numRuns: 60 },
    );
    expect(refused).toBeGreaterThan(0);
  });

  it("answers the same whether it asks for every hang beforehand or only for those it chooses", () => {
    fc.assert(
      fc.property(WOOD, (wood) => {
        const [all, few] = [chosen(wood, Infinity), chosen(wood, 0)];
        expect([few.search.placed, few.search.costUnits]).toEqual([all.search.placed, all.search.costUnits]);
        expect(few.search.bound).toBe(all.search.bound);
      }),
      { seed: 3, numRuns: 60 },
    );
  });
});

/** Most sleepers, then least cost, over every set of places that keep apart and everybody who may lie there. */
function best(
  serves: readonly (readonly boolean[])[],
  costs: Float64Array,
  apart: (a: number, b: number) => boolean,
): [placed: number, cost: number] {
  let found: [number, number] = [0, 0];
  const extend = (from: number, set: readonly number[], cost: number): void => {
    const isBetter = set.length > found[0] || (set.length === found[0] && cost < found[1]);
    if (isBetter && allSeated(set, serves)) found = [set.length, cost];
    for (let place = from; place < costs.length; place++) {
      if (set.every((other) => apart(other, place)))
        extend(place + 1, [...set, place], cost + (costs[place] ?? 0));
    }
  };
  extend(0, [], 0);
  return found;
}

function allSeated([place, ...rest]: readonly number[], serves: readonly (readonly boolean[])[]): boolean {
  if (place === undefined) return true;
  return serves.some((row, sleeper) => row[place] === true && allSeated(rest, serves.toSpliced(sleeper, 1)));
}
