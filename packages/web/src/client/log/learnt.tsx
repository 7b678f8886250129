import type { LearntWarmth, Sleeper } from "@nightspan/core";
import { learntLines } from "@nightspan/edge";
import { fill, WORDS } from "../words.ts";

interface LearntProps {
  readonly sleeper: Sleeper;
  readonly learnt: LearntWarmth | undefined;
}

/** What is learnt for next time, in words; degrees only behind "why", and none of anybody under 16. */
export function Learnt({ sleeper, learnt }: LearntProps) {
  if (learnt === undefined) return <p class="soft">{WORDS.log.nothing}</p>;
  const of = { sleepers: [{ ...sleeper, learnt }] };
  return (
    <div class="learnt" role="status">
      <h4>{WORDS.log.learnt}</h4>
      <Lines say={learntLines(of, false)} />
      {learnt.by === "nights" ? (
        <details class="why">
          <summary>{WORDS.log.why}</summary>
          <Lines say={learntLines(of, true)} />
        </details>
      ) : null}
    </div>
  );
}

function Lines({ say }: { readonly say: readonly string[] }) {
  return (
    <ul class="sentences">
      {say.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

export function countNights(count: number): string {
  return count === 1 ? WORDS.log.night : fill(WORDS.log.nights, { count });
}
