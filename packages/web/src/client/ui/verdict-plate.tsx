import type { Verdict } from "@nightspan/core";
import { verdictPlate } from "@nightspan/drawing";
import { sayVerdict } from "@nightspan/edge";
import type { ComponentChildren } from "preact";
import { Drawing } from "./drawing.tsx";

interface VerdictProps {
  readonly verdict: Verdict;
  /** At what to look, or why not to hang; said after the word. */
  readonly about?: ComponentChildren;
}

/** A verdict: its plate and, always, its word. */
export function VerdictWord({ verdict, about }: VerdictProps) {
  return (
    <p class={`verdict verdict-${verdict}`}>
      <Plate verdict={verdict} />
      <span>
        {sayVerdict(verdict)}
        {about === undefined ? null : <>: {about}</>}
      </span>
    </p>
  );
}

const PLATES = {
  clear: verdictPlate("clear", 30),
  "look-again": verdictPlate("look-again", 30),
  "do-not-hang": verdictPlate("do-not-hang", 30),
} as const;

/** The plate alone, for lines that say the word themselves. */
export function Plate({ verdict }: { readonly verdict: Verdict }) {
  return (
    <span class="plate" aria-hidden="true">
      <Drawing scene={PLATES[verdict]} />
    </span>
  );
}
