import type { Camp } from "../plan/camp.ts";
import type { DealtKit } from "./dealt-kit.ts";

/** How many spare berths the house asks for: one for each so many people, and one for those that are left over. */
export function sparesAsked({ rules, sleepers }: Pick<Camp, "rules" | "sleepers">): number {
  const per = rules.sparePer?.value;
  return per === undefined || !(per > 0) ? 0 : Math.ceil(sleepers.length / per);
}

/** Whom a spare berth is searched for: alike in kit and build, of no group, without wishes, behind everybody else. */
export function spareLike(kit: DealtKit, at: number): DealtKit {
  const { name, massKg, statureM, hand, reachM, stepM, sleeps, kit: own } = kit.sleeper;
  const alike = { name, massKg, statureM, hand, reachM, stepM, sleeps, kit: own };
  const id = `${SPARE}${String(at).padStart(6, "0")}`;
  return { ...kit, sleeper: { ...alike, id, leads: false, near: [], apart: [] } };
}

export function isSpare({ kit }: { readonly kit: DealtKit }): boolean {
  return isSpareId(kit.sleeper.id);
}

export function isSpareId(id: string): boolean {
  return id.startsWith(SPARE);
}

/** Behind every id that people write. */
const SPARE = "\u{10FFFF}spare";
