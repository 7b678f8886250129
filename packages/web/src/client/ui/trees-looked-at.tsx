import type { TreesLookedAt as Looked } from "@nightspan/core";
import { sayLookedAt } from "@nightspan/edge";
import { asSentence } from "../words.ts";

/** How many of the trees that carry somebody were looked at, by whom and when: beside every verdict. */
export function TreesLookedAt({ looked }: { readonly looked: Looked }) {
  return <p class="note soft looked-at">{asSentence(sayLookedAt(looked))}</p>;
}
