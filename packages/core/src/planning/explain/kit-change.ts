import type { Camp } from "../../plan/camp.ts";
import type { Hammock, Suspension } from "../../plan/kit.ts";
import { ASSUMED_HAMMOCK, ASSUMED_SUSPENSION } from "../assumed-kit.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { byCodeUnit } from "../order.ts";
import type { Change } from "./change.ts";

/**
 * One more of every kind that somebody goes without: a hammock like the longest of the store that carries whoever has
 * none, a suspension like the widest. Nothing where the kit is enough.
 */
export function kitChange({ camp, deal }: PreparedCamp): Change[] {
  const lacking = new Set(deal.short.flatMap(({ because }) => because.flatMap(({ about = [] }) => about)));
  const kinds = KINDS.filter((kind) => lacking.has(kind));
  if (kinds.length === 0) return [];
  const more = kinds.map((kind) => (kind === "hammock" ? moreHammock(camp) : moreSuspension(camp)));
  const withMore = { ...camp, kit: [...camp.kit, ...more] };
  return [{ change: "kit-more", about: kinds, from: [], to: [], unit: "1", advice: true, camp: withMore }];
}

const KINDS = ["hammock", "suspension"] as const;

function moreHammock({ kit, sleepers }: Camp): Hammock {
  const own = kit.filter((item) => item.kind === "hammock");
  const [longest] = own.sort((a, b) => b.lengthM - a.lengthM || byCodeUnit(a.id, b.id));
  const heaviestKg = sleepers.reduce((most, { massKg }) => Math.max(most, massKg), 0);
  const maxUserKg = Math.max(heaviestKg, longest?.maxUserKg ?? 0);
  return { ...(longest ?? ASSUMED_HAMMOCK), id: ONE_MORE, count: 1, state: "in-use", maxUserKg };
}

function moreSuspension({ kit }: Camp): Suspension {
  const own = kit.filter((item) => item.kind === "suspension");
  const [widest] = own.sort((a, b) => b.strapWidthM - a.strapWidthM || byCodeUnit(a.id, b.id));
  return { ...(widest ?? ASSUMED_SUSPENSION), id: `${ONE_MORE} suspension`, count: 1, state: "in-use" };
}

/** Behind every id that people write, so that what is there is dealt first. */
export const ONE_MORE = "\u{10FFFF}";
