import { expect, it } from "vitest";
import { exampleCamp, planOf } from "../examples.fixture.ts";
import { stepsBetween } from "./steps-between.ts";

it("steps go from trunk middle to trunk middle, stepped or taped", () => {
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
  // 3.85 m between the middles: five and a half steps of 0.70 m, however thick the trunks are.
  expect(stepsBetween({ ...own, spanM: 3.85 }, measured)).toBe("5½");
});
