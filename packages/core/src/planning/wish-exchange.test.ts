import { describe, expect, it } from "vitest";
import { listsOf } from "./berth-search-lists.ts";
import { searchExchanged } from "./wish-exchange.ts";
import { searchWishes } from "./wish-search.ts";
import { wishScore } from "./wish-score.ts";
import type { WishSearchInput } from "./wish-state.ts";

const GROUPS = 12;
const SIZE = 3;

/** Twelve groups of three in a row, 30 m from one group to the next; their hubs, where leaders lie, in the middle. */
function inRow(near: readonly (readonly [number, number])[], free = 0): WishSearchInput {
  const people = GROUPS * SIZE;
  const places = people + free;
  const groupOf = Int32Array.from({ length: people }, (_, person) => Math.floor(person / SIZE));
  const members = (group: number): number[] =>
    [...groupOf.keys()].filter((person) => groupOf[person] === group);
  return {
    people: {
      groupOf,
      groups: Array.from({ length: GROUPS }, (_, group) => ({
        withinM: 12,
        members: members(group),
        hubs: [group * SIZE + 1],
      })),
      near,
      apart: [],
      walls: [],
    },
    prices: { farUnits: 1000, wishUnits: 200, spreadUnitsPerM: 0, nearM: 12, apartM: 8 },
    start: Int32Array.from({ length: people }, (_, person) => person),
    spots: Array.from({ length: places }, (_, place) => [10 * place, 0]),
    costUnits: new Float64Array(places),
    first: Int32Array.from({ length: places }, (_, place) => 2 * place),
    second: Int32Array.from({ length: places }, (_, place) => 2 * place + 1),
    conflicts: listsOf(places, () => undefined),
    trees: 2 * places,
    capacity: 1,
    serves: () => true,
    burden: () => 0,
  };
}

/** Somebody of each group wishes somebody near who is of the group five farther on. */
const FAR_APART = [0, 1, 2, 3, 4].map((group) => [group * SIZE, (group + 6) * SIZE + 2] as const);

describe("searchExchanged", () => {
  it("lays groups beside each other whose people wish each other near, at no cost", () => {
    const input = inRow(FAR_APART);
    expect(searchWishes(input).amiss).toBeGreaterThan(0);
    expect(searchExchanged(input)).toMatchObject({ units: 0, amiss: 0 });
  });

  it("leaves everybody a place of their own, and counts what is amiss truly", () => {
    // More wishes than a row of groups can meet: each group has two neighbours.
    const wishes = [1, 2, 3, 4, 5].map((group) => [0, group * SIZE] as const);
    const input = inRow(wishes);
    const { placeOf, amiss } = searchExchanged(input);
    expect(new Set(placeOf).size).toBe(GROUPS * SIZE);
    const score = wishScore(input.people, input.prices, placeOf, input.spots);
    expect(amiss).toBe(score.around([...placeOf.keys()]));
    expect(amiss).toBeLessThan(wishes.length * 200);
  });

  it("moves nobody to where they cannot lie", () => {
    const input = {
      ...inRow(FAR_APART),
      serves: (person: number, place: number) => Math.abs(person - place) < 4,
    };
    const { placeOf } = searchExchanged(input);
    for (const [person, place] of placeOf.entries()) expect(input.serves(person, place)).toBe(true);
  });

  it("is the plain search where nobody wishes", () => {
    const input = inRow([]);
    expect(searchExchanged(input)).toEqual(searchWishes(input));
  });
});
