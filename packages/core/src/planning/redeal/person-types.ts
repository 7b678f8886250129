import type { Sleeper } from "../../plan/camp.ts";
import type { Hammock, Suspension } from "../../plan/kit.ts";
import { ASSUMED_HAMMOCK, ASSUMED_SUSPENSION } from "../assumed-kit.ts";
import { byCodeUnit } from "../order.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";
import type { Choice, LineGroup, PersonType } from "./redeal-types.ts";

export interface DealtTypes {
  readonly types: readonly PersonType[];
  readonly hammocks: readonly LineGroup<Hammock>[];
  readonly suspensions: readonly LineGroup<Suspension>[];
  /** No dealing lets more people hang, wherever there are trees. */
  readonly most: number;
}

/** Who is alike, and what of the store they could be dealt. */
export function personTypes({ camp, deal, pinned }: PreparedCamp): DealtTypes {
  const kept = [...deal.kept.values()];
  const hammocks = groupsOf(
    camp.kit.filter((item) => item.kind === "hammock"),
    kept.flatMap(({ hammock }) => hammock?.id ?? []),
    ({ lengthM, ridgelineM, massKg, eaN, maxUserKg }) => [lengthM, ridgelineM, massKg, eaN, maxUserKg],
  );
  const suspensions = groupsOf(
    camp.kit.filter((item) => item.kind === "suspension"),
    kept.flatMap(({ suspension }) => suspension?.id ?? []),
    suspensionMarks,
  );
  const lists = (kind: "hammock" | "suspension"): boolean => camp.kit.some((item) => item.kind === kind);
  const dealt = new Map(deal.dealt.map((kit) => [kit.sleeper.id, kit]));
  const byKey = new Map<string, { type: PersonType; members: [Sleeper, ...Sleeper[]] }>();
  for (const sleeper of [...camp.sleepers].sort((a, b) => byCodeUnit(a.id, b.id))) {
    const own = deal.kept.get(sleeper.id);
    const held = dealt.get(sleeper.id);
    const type = {
      hammocks: choices(
        own?.hammock ?? (lists("hammock") ? undefined : ASSUMED_HAMMOCK),
        hammocks,
        held?.hammock,
      ).filter(({ line, group }) => group < 0 || sleeper.massKg <= (line.maxUserKg ?? Infinity)),
      suspensions: choices(
        own?.suspension ?? (lists("suspension") ? undefined : ASSUMED_SUSPENSION),
        suspensions,
        held?.suspension,
      ),
      ...placeOf(sleeper, pinned),
    };
    const key = JSON.stringify([sleeper.massKg, sleeper.statureM, marksOf(type)]);
    const known = byKey.get(key);
    if (known === undefined) {
      const members: [Sleeper, ...Sleeper[]] = [sleeper];
      byKey.set(key, { members, type: { ...type, members } });
    } else known.members.push(sleeper);
  }
  const types = [...byKey.values()].map(({ type }) => type);
  const most = Math.min(
    camp.sleepers.length,
    mostOf(hammocks, types, "hammocks"),
    mostOf(suspensions, types, "suspensions"),
  );
  return { types, hammocks, suspensions, most };
}

function suspensionMarks(item: Suspension): readonly unknown[] {
  const { type, minM, maxM, strapLengthM, strapWidthM, eaN, wraps, throughOwnEye, connectorM } = item;
  const strength = [item.ratedLoadN, item.breakingN];
  return [type, minM, maxM, strapLengthM, strapWidthM, eaN, wraps, throughOwnEye, connectorM, ...strength];
}

function groupsOf<L extends Hammock | Suspension>(
  lines: readonly L[],
  kept: readonly string[],
  marks: (line: L) => readonly unknown[],
): LineGroup<L>[] {
  const byKey = new Map<string, { lines: [L, ...L[]]; pieces: number }>();
  for (const line of [...lines].sort((a, b) => byCodeUnit(a.id, b.id))) {
    const pieces = piecesInUse(line) - kept.filter((id) => id === line.id).length;
    if (pieces <= 0) continue;
    const key = JSON.stringify(marks(line).map((mark) => mark ?? null));
    const known = byKey.get(key);
    if (known === undefined) byKey.set(key, { lines: [line], pieces });
    else {
      known.lines.push(line);
      known.pieces += pieces;
    }
  }
  return [...byKey.values()];
}

function choices<L extends Hammock | Suspension>(
  own: L | undefined,
  groups: readonly LineGroup<L>[],
  held: L | undefined,
): Choice<L>[] {
  if (own !== undefined) return [{ line: own, group: -1, asDealt: true }];
  return groups.map(({ lines }, group) => {
    return { line: lines[0], group, asDealt: lines.some(({ id }) => id === held?.id) };
  });
}

function placeOf(sleeper: Sleeper, pinned: PreparedCamp["pinned"]): Pick<PersonType, "place"> {
  const pin = pinned.find(({ kit }) => kit.sleeper.id === sleeper.id);
  return pin === undefined ? {} : { place: pin.place };
}

function marksOf({ hammocks, suspensions, place }: Omit<PersonType, "members">): readonly unknown[] {
  const mark = ({ line, group, asDealt }: Choice<Hammock | Suspension>) => [line.id, group, asDealt];
  return [hammocks.map(mark), suspensions.map(mark), place];
}

/** Pieces in the store and those kept for people; all people where the usual one is assumed. */
function mostOf(
  groups: readonly LineGroup<unknown>[],
  types: readonly PersonType[],
  kind: "hammocks" | "suspensions",
): number {
  const own = types.reduce(
    (sum, type) => sum + (type[kind].some(({ group }) => group < 0) ? type.members.length : 0),
    0,
  );
  return groups.reduce((sum, { pieces }) => sum + pieces, own);
}
