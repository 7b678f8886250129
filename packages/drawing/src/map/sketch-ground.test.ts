import { degrees } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { pacedPairs } from "../fixture/variants.fixture.ts";
import { sketchGround } from "./sketch-ground.ts";

function between(trees: ReturnType<typeof sketchGround>["trees"], one: string, other: string) {
  const [a, b] = [one, other].map((id) => trees.find((tree) => tree.id === id)?.at ?? [NaN, NaN]);
  const [dx, dy] = [(b?.[0] ?? NaN) - (a?.[0] ?? NaN), (b?.[1] ?? NaN) - (a?.[1] ?? NaN)];
  return { spanM: Math.hypot(dx, dy), bearingRad: Math.atan2(dx, dy) };
}

describe("sketchGround", () => {
  const { trees, northKnown } = sketchGround(pacedPairs());

  it("lays every pair out by its span and bearing, from trees they share", () => {
    expect(trees.map(({ id }) => id).sort()).toEqual(["blue 1", "blue 2", "red 1", "red 2", "red 3"]);
    expect(between(trees, "red 1", "red 2").spanM).toBeCloseTo(4.1, 9);
    expect(between(trees, "red 1", "red 2").bearingRad).toBeCloseTo(degrees(60), 9);
    expect(between(trees, "red 2", "red 3").bearingRad).toBeCloseTo(degrees(165), 9);
    expect(between(trees, "blue 1", "blue 2").spanM).toBeCloseTo(3.8, 9);
  });

  it("shows no north where a bearing is not known", () => expect(northKnown).toBe(false));

  it("keeps clusters apart", () => {
    expect(between(trees, "red 2", "blue 1").spanM).toBeGreaterThan(2);
  });

  it("fills a tree that was looked at, and leaves the others open", () => {
    const states = Object.fromEntries(trees.map(({ id, state }) => [id, state]));
    expect(states).toMatchObject({ "red 1": "looked-at", "blue 1": "not-looked-at" });
  });
});
