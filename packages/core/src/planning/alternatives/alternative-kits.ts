import type { Camp } from "../../plan/camp.ts";
import type { AlternativeKind } from "../../plan/alternative-types.ts";
import type { Hammock, KitItem, Suspension } from "../../plan/kit.ts";
import type { DealtKit } from "../dealt-kit.ts";
import { byCodeUnit } from "../order.ts";

/** Something else to hang in at the same two trees. */
export interface AlternativeKit {
  readonly kind: AlternativeKind;
  readonly item?: string;
  readonly kit: DealtKit;
}

/**
 * What else a sleeper could hang in: fewer parts in line, and other hammocks and suspensions of the store that carry
 * the sleeper and are wide enough. Things alike are tried once.
 *
 * Source   common-practice: a sling's shortest length is what keeps a hammock low between near trees
 */
export function alternativeKits({ kit: store, rules }: Camp, dealt: DealtKit): readonly AlternativeKit[] {
  const inUse = store.filter(({ state }) => state === "in-use");
  const hammocks = inUse
    .filter(isHammock)
    .filter(({ maxUserKg }) => dealt.sleeper.massKg <= (maxUserKg ?? Infinity))
    .filter((item) => hammockKey(item) !== hammockKey(dealt.hammock));
  const suspensions = inUse
    .filter(isSuspension)
    .filter(({ strapWidthM }) => strapWidthM >= rules.strapWidthMinM.value)
    .filter((item) => suspensionKey(item) !== suspensionKey(dealt.suspension));
  return [
    ...fewerParts(dealt),
    ...unlike(hammocks, hammockKey).map((hammock) => ({
      kind: "other-hammock" as const,
      item: hammock.id,
      kit: { ...dealt, hammock },
    })),
    ...unlike(suspensions, suspensionKey).map((suspension) => ({
      kind: "other-suspension" as const,
      item: suspension.id,
      kit: { ...dealt, suspension },
    })),
  ];
}

/** A hitch on a strap takes up this much between bark and hammock end [m]. Source: common-practice. */
const HITCH_M = 0.1;

/** A sling without its connector, and the tree strap alone; nothing for webbing, which has neither. */
function fewerParts(dealt: DealtKit): readonly AlternativeKit[] {
  const { connectorM = 0, maxM, ...bare } = dealt.suspension;
  if (bare.type === "tied-webbing") return [];
  const longest = maxM === undefined ? {} : { maxM: Math.max(0, maxM - connectorM) };
  const shorter: Suspension = { ...bare, minM: Math.max(0, bare.minM - connectorM), ...longest };
  const alone: Suspension = { ...bare, type: "tied-webbing", minM: HITCH_M, throughOwnEye: true };
  return [
    ...(connectorM > 0
      ? [{ kind: "connector-left-out" as const, kit: { ...dealt, suspension: shorter } }]
      : []),
    { kind: "strap-alone" as const, kit: { ...dealt, suspension: alone } },
  ];
}

function isHammock(item: KitItem): item is Hammock {
  return item.kind === "hammock";
}

function isSuspension(item: KitItem): item is Suspension {
  return item.kind === "suspension";
}

function unlike<T extends KitItem>(items: readonly T[], key: (item: T) => string): readonly T[] {
  const seen = new Set<string>();
  return [...items]
    .sort((a, b) => byCodeUnit(a.id, b.id))
    .filter((item) => {
      if (seen.has(key(item))) return false;
      seen.add(key(item));
      return true;
    });
}

/** What of an item the hang depends on. */
function hammockKey({ lengthM, ridgelineM, massKg, eaN }: Hammock): string {
  return JSON.stringify([lengthM, ridgelineM, massKg, eaN]);
}

function suspensionKey(item: Suspension): string {
  const { type, minM, maxM, strapLengthM, eaN, wraps, throughOwnEye, connectorM } = item;
  return JSON.stringify([type, minM, maxM, strapLengthM, eaN, wraps, throughOwnEye, connectorM]);
}
