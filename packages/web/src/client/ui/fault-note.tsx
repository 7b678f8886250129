import type { Refusal } from "@nightspan/core";
import { fill, WORDS } from "../words.ts";

interface FaultNoteProps {
  readonly id: string;
  readonly refusals: readonly Refusal[];
  /** The field that was changed; a fault elsewhere names its own. */
  readonly at: string;
}

/** What was found in a field, and what is needed. */
export function FaultNote({ id, refusals, at }: FaultNoteProps) {
  const here = at;
  return (
    <div class="fault" id={id} role="status">
      {refusals.map((refusal) => (
        <p key={`${refusal.field} ${refusal.need}`}>
          {refusal.field === here ? null : <b>{refusal.field}: </b>}
          {sayGot(refusal.got)}; {fill(WORDS.files.need, { need: refusal.need })}
        </p>
      ))}
    </div>
  );
}

/** What was found, short enough to stand in a line. */
export function sayGot(got: unknown): string {
  if (got === undefined || got === null) return WORDS.files.nothing;
  const written = typeof got === "string" ? `"${got}"` : JSON.stringify(got);
  return fill(WORDS.files.found, { got: written.length > 60 ? `${written.slice(0, 60)}…` : written });
}
