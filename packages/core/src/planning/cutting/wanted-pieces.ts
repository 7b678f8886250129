import type { KitItem } from "../../plan/kit.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import type { CutMaterial, CutPiece, CutPurpose } from "../../plan/store-types.ts";
import { ASSUMED_SUSPENSION } from "../assumed-kit.ts";

interface Wanted {
  readonly purpose: CutPurpose;
  /** From end to end in use [m]. */
  readonly netM: number;
  readonly allowanceM: number;
  readonly berth: string;
  readonly widthM?: number;
}

/**
 * Every length to cut for the berths of a plan, lengths alike put together, the longest first.
 *
 * Straps are cut where the store has none made up (no length stated), ridgelines of hammocks where the hammock is the assumed
 * one; for each tarp its ridge line, two loops for friction hitches and its guys; drip lines for the suspension, and for the
 * ridge line of a tarp.
 *
 * Shapes   berths + lines of the store → pieces
 * Units    metres, rounded up to whole 5 cm
 * Error    allowances are common practice: knots and tails are tied long and trimmed
 * Source   common-practice (handbook/kit.md)
 */
export function wantedPieces(berths: readonly PlannedBerth[], kit: readonly KitItem[]): CutPiece[] {
  const alike = new Map<string, CutPiece>();
  for (const { purpose, netM, allowanceM, berth, widthM } of berths.flatMap((one) => wantedOf(one, kit))) {
    const lengthM = Math.ceil((netM + allowanceM) * STEPS_A_METRE - 1e-6) / STEPS_A_METRE;
    const key = [purpose, lengthM.toFixed(2), widthM].join("|");
    const before = alike.get(key);
    alike.set(key, {
      material: MATERIAL[purpose],
      purpose,
      lengthM,
      count: (before?.count ?? 0) + 1,
      allowanceM: Math.max(before?.allowanceM ?? 0, allowanceM),
      berths: [...(before?.berths ?? []), berth],
      ...(widthM === undefined ? {} : { widthM }),
    });
  }
  return [...alike.values()].sort((a, b) => b.lengthM - a.lengthM);
}

function wantedOf(berth: PlannedBerth, kit: readonly KitItem[]): Wanted[] {
  return [...straps(berth, kit), ...ridgeline(berth), ...tarpLines(berth), ...dripLines(berth)];
}

function straps({ id, hang, kit: held }: PlannedBerth, kit: readonly KitItem[]): Wanted[] {
  const line = kit.find((item) => item.id === held.suspension);
  const suspension = line?.kind === "suspension" ? line : ASSUMED_SUSPENSION;
  if (suspension.strapLengthM !== undefined) return [];
  return [hang.head, hang.foot].map(({ webbingM, parts }) => {
    const allowanceM = parts?.tieM ?? 0;
    return {
      purpose: "strap" as const,
      netM: webbingM - allowanceM,
      allowanceM,
      berth: id,
      widthM: suspension.strapWidthM,
    };
  });
}

function ridgeline({ id, hang, kit }: PlannedBerth): Wanted[] {
  if (kit.hammock !== undefined || hang.ridgelineM === undefined) return [];
  return [{ purpose: "ridgeline", netM: hang.ridgelineM, allowanceM: 2 * LOOP_M, berth: id }];
}

function tarpLines({ id, tarp, request }: PlannedBerth): Wanted[] {
  if (tarp === undefined) return [];
  const headTrunkM = request?.head.dbhM ?? USUAL_TRUNK_M;
  const footTrunkM = request?.foot.dbhM ?? USUAL_TRUNK_M;
  // From bark to bark, and once round each trunk.
  const ridgeM = tarp.ridge.spanM - headTrunkM / 2 + Math.PI * (headTrunkM + footTrunkM);
  const guys = tarp.guys.filter(({ lengthM }) => lengthM > 0);
  return [
    { purpose: "tarp-ridge", netM: ridgeM, allowanceM: RIDGE_KNOTS_M, berth: id },
    ...[0, 1].map(() => ({
      purpose: "hitch-loop" as const,
      netM: HITCH_LOOP_M,
      allowanceM: TAILS_M,
      berth: id,
    })),
    ...guys.map(({ lengthM }) => ({
      purpose: "guy" as const,
      netM: lengthM,
      allowanceM: GUY_KNOTS_M,
      berth: id,
    })),
  ];
}

function dripLines({ id, tarp }: PlannedBerth): Wanted[] {
  return Array.from({ length: tarp === undefined ? 2 : 4 }, () => ({
    purpose: "drip-line" as const,
    netM: DRIP_M,
    allowanceM: TAILS_M,
    berth: id,
  }));
}

const MATERIAL: Readonly<Record<CutPurpose, CutMaterial>> = {
  strap: "webbing",
  ridgeline: "ridge-cord",
  "tarp-ridge": "ridge-cord",
  guy: "guy-cord",
  "hitch-loop": "thin-cord",
  "drip-line": "thin-cord",
};

/** Whole 5 cm. */
const STEPS_A_METRE = 20;

// Lengths that knots and tails take up [m]. Source: common-practice.
/** A fixed loop at an end. */
const LOOP_M = 0.25;
/** A slipped hitch at one tree, a tensioning hitch at the other. */
const RIDGE_KNOTS_M = 1;
/** A loop at the tarp, an adjustable hitch at the peg. */
const GUY_KNOTS_M = 0.6;
/** The loop of a friction hitch, opened out. */
const HITCH_LOOP_M = 0.6;
/** Two tails of a bend. */
const TAILS_M = 0.15;
/** A string that hangs clear. */
const DRIP_M = 0.15;
/** Where nobody knows the trunk. */
const USUAL_TRUNK_M = 0.3;
