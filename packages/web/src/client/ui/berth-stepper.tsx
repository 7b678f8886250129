import type { PlannedBerth } from "@nightspan/core";
import { fill, WORDS } from "../words.ts";
import { Bead } from "./bead.tsx";
import { LinkButton } from "./link-button.tsx";

interface BerthStepperProps {
  readonly berths: readonly PlannedBerth[];
  readonly id: string;
}

/** From berth to berth, and how far along the row. */
export function BerthStepper({ berths, id }: BerthStepperProps) {
  const index = berths.findIndex((berth) => berth.id === id);
  const [before, after] = [berths[index - 1], berths[index + 1]];
  return (
    <nav class="stepper" aria-label={fill(WORDS.berth.stepper, { n: index + 1, count: berths.length })}>
      {before === undefined ? <span /> : <Step id={before.id} word={WORDS.berth.before} />}
      <span class="stepper-where">
        <span class="note">{fill(WORDS.berth.stepper, { n: index + 1, count: berths.length })}</span>
        <Bead step={index + 1} of={berths.length} />
      </span>
      {after === undefined ? <span /> : <Step id={after.id} word={WORDS.berth.after} />}
    </nav>
  );
}

function Step({ id, word }: { readonly id: string; readonly word: string }) {
  return (
    <LinkButton to={{ page: "berth", berth: id }} label={fill(word, { id })}>
      {id}
    </LinkButton>
  );
}
