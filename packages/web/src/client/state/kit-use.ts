import type { Plan } from "@nightspan/core";
import type { CampDocument, KitDocument, SleeperDocument } from "@nightspan/edge";
import { editCamp } from "./camp-store.ts";
import { writeAt } from "./document-path.ts";

export const DEALT = ["hammock", "suspension", "tarp", "under", "over"] as const;
export type DealtKind = (typeof DEALT)[number];

/** How many of a line this plan deals out. */
export function dealtOf(plan: Plan | undefined, item: KitDocument): number {
  const { kind, id } = item;
  if (plan === undefined || !isDealt(kind)) return 0;
  return plan.berths.filter(({ kit }) => kit[kind] === id).length;
}

export function isDealt(kind: KitDocument["kind"]): kind is DealtKind {
  return DEALT.some((one) => one === kind);
}

/** What is kept for somebody, by kind; the file may list it by kind or as ids alone. */
export function pinsOf(
  { kit: kept = [] }: SleeperDocument,
  kit: readonly KitDocument[],
): Readonly<Record<string, string | undefined>> {
  if (!isList(kept)) return kept;
  const pins: Record<string, string> = {};
  for (const id of kept) {
    const kind = kit.find((item) => item.id === id)?.kind;
    if (kind !== undefined && isDealt(kind)) pins[kind] = id;
  }
  return pins;
}

function isList(kept: NonNullable<SleeperDocument["kit"]>): kept is readonly string[] & typeof kept {
  return Array.isArray(kept);
}

/** Keeps one thing of a kind for somebody, or lets it be dealt again. */
export function pinItem(sleeper: string, kind: DealtKind, item: string | undefined): void {
  editCamp("", (document) => withPin(document, sleeper, kind, item));
}

function withPin(
  document: CampDocument,
  sleeper: string,
  kind: DealtKind,
  item: string | undefined,
): unknown {
  const index = document.sleepers.findIndex(({ id }) => id === sleeper);
  const person = document.sleepers[index];
  if (person === undefined) return document;
  const kept = { ...pinsOf(person, document.kit ?? []) };
  if (item === undefined) Reflect.deleteProperty(kept, kind);
  else kept[kind] = item;
  const empty = Object.keys(kept).length === 0;
  return writeAt(document, ["sleepers", index, "kit"], empty ? undefined : kept);
}
