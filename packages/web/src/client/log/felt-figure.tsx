import type { Felt } from "@nightspan/core";
import type { WarmthHalf } from "@nightspan/core";

interface FeltFigureProps {
  readonly half: WarmthHalf;
  readonly felt: Felt;
}

/** How many strokes of heat are drawn: the more that stay, the warmer. */
const STROKES: Readonly<Record<Felt, number>> = { cold: 0, cool: 1, right: 2, warm: 3 };
const AT_X = [26, 40, 54] as const;

/** A sleeper in cloth, and what was felt below the back or above: cold comes in from outside, warmth stays in strokes. */
export function FeltFigure({ half, felt }: FeltFigureProps) {
  const y = half === "under" ? 34 : 8;
  return (
    <svg class="felt-figure" viewBox="0 0 80 48" width="80" height="48" aria-hidden="true">
      <path class="felt-cloth" d="M4 10Q40 50 76 10" />
      <path class="felt-body" d="M20 21Q40 33 60 20" />
      <circle class="felt-head" cx="17" cy="15" r="4.5" />
      {felt === "cold" ? (
        <path
          class="felt-cold"
          d={half === "under" ? "M40 47V36M34 41L40 35L46 41" : "M40 2V14M34 9L40 15L46 9"}
        />
      ) : (
        AT_X.slice(0, STROKES[felt]).map((x) => (
          <path key={x} class="felt-warm" d={`M${x} ${y}q3 2.5 0 5t0 5`} />
        ))
      )}
    </svg>
  );
}
