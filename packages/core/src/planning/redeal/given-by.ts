import type { Sleeper } from "../../plan/camp.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";
import type { KitSeat } from "./kit-program.ts";
import type { DealtTypes } from "./person-types.ts";
import type { Choice, KitGiven, KitWay, LineGroup } from "./redeal-types.ts";

type Part = "hammock" | "suspension";

interface Served {
  readonly sleeper: Sleeper;
  readonly way: KitWay;
}

/** The lines that each person of a solution is given; whoever may keep the very line they had keeps it. */
export function givenBy(
  { camp, deal }: PreparedCamp,
  dealt: DealtTypes,
  ways: readonly KitWay[],
  seats: readonly KitSeat[],
): KitGiven {
  const served = servedBy(dealt, ways, seats);
  const held = new Map(deal.dealt.map((kit) => [kit.sleeper.id, kit]));
  const left = new Map(camp.kit.map((item) => [item.id, piecesInUse(item)]));
  for (const own of deal.kept.values()) {
    for (const line of [own.hammock, own.suspension]) if (line !== undefined) take(left, line.id);
  }
  const given = new Map<string, string[]>();
  const give = (sleeper: Sleeper, id: string): void => {
    take(left, id);
    given.set(sleeper.id, [...(given.get(sleeper.id) ?? []), id]);
  };
  for (const part of PARTS) {
    const changing = served.filter(({ sleeper, way }) => {
      const { group, asDealt } = way[part];
      const line = held.get(sleeper.id)?.[part];
      if (group >= 0 && asDealt && line !== undefined) give(sleeper, line.id);
      return group >= 0 && !asDealt;
    });
    for (const { sleeper, way } of changing) {
      const line = lineOf(dealt, part, way[part]).find(({ id }) => (left.get(id) ?? 0) > 0);
      if (line !== undefined) give(sleeper, line.id);
    }
  }
  return given;
}

const PARTS: readonly Part[] = ["hammock", "suspension"];

function servedBy(dealt: DealtTypes, ways: readonly KitWay[], seats: readonly KitSeat[]): Served[] {
  const next = new Int32Array(dealt.types.length);
  return seats.flatMap(({ way: index }) => {
    const way = ways[index];
    if (way === undefined) return [];
    const at = next[way.type] ?? 0;
    next[way.type] = at + 1;
    const sleeper = dealt.types[way.type]?.members[at];
    return sleeper === undefined ? [] : [{ sleeper, way }];
  });
}

function lineOf(
  dealt: DealtTypes,
  part: Part,
  { group }: Choice<unknown>,
): readonly { readonly id: string }[] {
  const groups: readonly (LineGroup<{ readonly id: string }> | undefined)[] =
    part === "hammock" ? dealt.hammocks : dealt.suspensions;
  return groups[group]?.lines ?? [];
}

function take(left: Map<string, number>, id: string): void {
  left.set(id, (left.get(id) ?? 0) - 1);
}
