import type { LearntHalf, LearntWarmth, WarmthHalf } from "@nightspan/core";
import { fill, WORDS } from "../words.ts";

/** Less is no difference worth a word [K]. */
const LEAST_TOLD_K = 0.5;

/** What is learnt for next time, in words; degrees only behind "why", and none of anybody under 16. */
export function Learnt({ learnt }: { readonly learnt: LearntWarmth | undefined }) {
  if (learnt === undefined) return <p class="soft">{WORDS.log.nothing}</p>;
  const halves = ["over", "under"] as const;
  return (
    <div class="learnt" role="status">
      <h4>{WORDS.log.learnt}</h4>
      <ul class="sentences">
        {halves
          .flatMap((half) => sayHalf(learnt, half))
          .map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
      </ul>
      {learnt.by === "nights" ? (
        <details class="why">
          <summary>{WORDS.log.why}</summary>
          <ul class="sentences">
            {halves
              .flatMap((half) => figures(learnt[half], half))
              .map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
          </ul>
        </details>
      ) : null}
    </div>
  );
}

function sayHalf(learnt: LearntWarmth, key: WarmthHalf): readonly string[] {
  const half = WORDS.log[key];
  if (learnt.by === "youth-rule") {
    const more = learnt[key] === "warmer-than-the-rule";
    return [fill(more ? WORDS.log.moreThanRule : WORDS.log.byRule, { half })];
  }
  const { nights, offsetK } = learnt[key];
  if (nights === 0) return [];
  if (Math.abs(offsetK) < LEAST_TOLD_K) return [fill(WORDS.log.asReckoned, { half })];
  return [fill(offsetK > 0 ? WORDS.log.colder : WORDS.log.warmer, { half })];
}

function figures({ nights, offsetK, bandK }: LearntHalf, key: WarmthHalf): readonly string[] {
  if (nights === 0) return [];
  const offset = `${offsetK < 0 ? "−" : ""}${Math.abs(offsetK).toFixed(1)}`;
  return [
    fill(WORDS.log.figures, {
      half: WORDS.log[key],
      offset,
      band: bandK.toFixed(1),
      nights: countNights(nights),
    }),
  ];
}

export function countNights(count: number): string {
  return count === 1 ? WORDS.log.night : fill(WORDS.log.nights, { count });
}
