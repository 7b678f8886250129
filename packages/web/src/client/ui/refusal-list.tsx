import type { Refusal } from "@nightspan/core";
import { fill, WORDS } from "../words.ts";
import { sayGot } from "./fault-note.tsx";

/** Why a camp cannot be planned yet: where, what was found, what is needed. */
export function RefusalList({ refusals }: { readonly refusals: readonly Refusal[] }) {
  if (refusals.length === 0) return null;
  return (
    <section class="refusals" role="status">
      <h3>{WORDS.planning.cannot}</h3>
      <ul>
        {refusals.map((refusal) => (
          <li key={`${refusal.field} ${refusal.need}`} class="fault">
            <b>{refusal.field}</b>: {sayGot(refusal.got)}; {fill(WORDS.files.need, { need: refusal.need })}
          </li>
        ))}
      </ul>
    </section>
  );
}
