import type { Camp, PlannedBerth } from "@nightspan/core";
import { namesOf, sayAlternatives } from "@nightspan/edge";
import { WORDS } from "../words.ts";

/** What else would do at these two trees where the sling is too long or too short: each worked out, not guessed. */
export function Alternatives({ berth, camp }: { readonly berth: PlannedBerth; readonly camp: Camp }) {
  if (berth.alternatives === undefined) return null;
  return (
    <section class="alternatives">
      <h3>{WORDS.berth.alternatives}</h3>
      <ul class="sentences">
        {sayAlternatives(berth.alternatives, namesOf(camp)).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
