import { expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { stepsBetween } from "./steps-between.ts";

it("steps go from bark to bark, and a stepped pair keeps the count it was given", () => {
  const { camp } = exampleCamp("pairs");
  const [berth] = planOf(camp).berths;
  const pair = camp.ground?.pairs.find(({ id }) => id === berth?.pair);
  if (berth === undefined || pair === undefined) throw new Error("no berth");
  const own = { ...berth, sleeper: "inés" };
  expect(pair.stepped).toBe(true);
  expect(stepsBetween(own, camp)).toBe("5½");
  const { ground } = camp;
  if (ground === undefined) throw new Error("no ground");
  const taped = { ...pair, spanM: 3.81, stepped: false, dbhM: [0.34, 0.28] as const };
  const measured = { ...camp, ground: { ...ground, pairs: [taped] } };
  // 3.81 m less half of both trunks is 3.50 m: five steps of 0.70 m.
  expect(stepsBetween({ ...own, spanM: 3.81 }, measured)).toBe("5");
});
