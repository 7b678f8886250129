import type { Camp, LearntHalf, LearntWarmth } from "@nightspan/core";
import { fencedName } from "./plain-text.ts";

/** What a log has taught about the sleepers of a camp, a line each; kelvins only behind `why`, and never under 16. */
export function learntLines({ sleepers }: Pick<Camp, "sleepers">, why: boolean): readonly string[] {
  const lines = sleepers.flatMap(({ name, learnt }) =>
    learnt === undefined ? [] : [`${fencedName(name)}: ${sayLearnt(learnt, why)}`],
  );
  return lines.length > 0 ? lines : ["Nothing is learnt yet: no night of these sleepers tells anything."];
}

function sayLearnt(learnt: LearntWarmth, why: boolean): string {
  if (learnt.by === "nights") {
    return `under ${sayHalf(learnt.under, why)}; over ${sayHalf(learnt.over, why)}.`;
  }
  const halves = (["under", "over"] as const).filter((half) => learnt[half] === "warmer-than-the-rule");
  return halves.length === 0 ? "as the rule asks." : `warmer than the rule asks ${halves.join(" and ")}.`;
}

function sayHalf({ nights, offsetK, bandK }: LearntHalf, why: boolean): string {
  if (nights === 0) return "nothing yet";
  const found =
    Math.abs(offsetK) < LEAST_TOLD_K
      ? "as reckoned"
      : offsetK > 0
        ? "colder than reckoned"
        : "warmer than reckoned";
  const by = why ? ` by ${Math.abs(offsetK).toFixed(1)} K, give or take ${bandK.toFixed(1)} K` : "";
  return `${found}${by} (${nights} ${nights === 1 ? "night" : "nights"})`;
}

/** Less is no difference worth a word [K]. Source: house-convention. */
const LEAST_TOLD_K = 0.5;
