import { signal } from "@preact/signals";
import type { View } from "../map/view.ts";

/** What is picked on the map: a berth or a tree by id, or several that lie under one press. */
export type Picked =
  | { readonly kind: "berth"; readonly id: string }
  | { readonly kind: "tree"; readonly id: string }
  | { readonly kind: "several"; readonly refs: readonly string[] };

export const picked = signal<Picked | undefined>(undefined);

/** The part of the ground in view, by camp, once the reader chose one. Kept while the app is open. */
export const mapViews = signal<ReadonlyMap<string, View | "whole">>(new Map());

export function keepView(camp: string, view: View | "whole"): void {
  mapViews.value = new Map(mapViews.value).set(camp, view);
}

/** Picks what a press met: nothing, one thing, or a list to choose from. */
export function pick(refs: readonly string[]): void {
  const known = refs.flatMap(expanded).filter((ref) => pickOf(ref) !== undefined);
  const distinct = [...new Set(known)];
  const [only] = distinct;
  picked.value =
    distinct.length > 1 ? { kind: "several", refs: distinct } : only === undefined ? undefined : pickOf(only);
}

export function pickOf(ref: string): Picked | undefined {
  const [kind, ...rest] = ref.split("/");
  const id = rest.join("/");
  return kind === "berth" || kind === "tree" ? { kind, id } : undefined;
}

/** "berths/7+8" stands for each of them. */
function expanded(ref: string): readonly string[] {
  const [kind, ids = ""] = ref.split("/");
  return kind === "berths" ? ids.split("+").map((id) => `berth/${id}`) : [ref];
}
