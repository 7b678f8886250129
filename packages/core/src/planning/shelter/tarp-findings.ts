import { byRule, compare, kept, type Finding } from "../../outcome/finding.ts";
import type { RuleKey } from "../../outcome/rule-key.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { BerthTarp, GuyConflict, WetPart } from "../../plan/tarp-types.ts";
import { COVERED_SHARE } from "../../shelter/lower-by.ts";
import { STRAP_CLEAR_M } from "../../shelter/best-pitch.ts";
import { ENDS, type End } from "../../shelter/tarp-geometry.ts";
import { berthSubject } from "../findings/berth-case.ts";
import { PATH_CLEAR_M, STEM_CLEAR_M } from "./guy-conflicts.ts";

export interface TarpCase {
  readonly berth: string;
  readonly tarp: Omit<BerthTarp, "findings">;
  readonly isRainy: boolean;
  readonly ridgeM: number;
  /** Level, gather to gather. */
  readonly gatherM: number;
  readonly pegHoldsN?: number;
  /** The tarp line over the strap at each tree. */
  readonly cordClearM: Readonly<Record<End, number>>;
}

/** Every comparison about one pitched tarp. */
export function tarpFindings(tarp: TarpCase): Finding[] {
  return [
    ...overhang(tarp),
    headroom(tarp),
    diagonal(tarp),
    ...wet(tarp),
    ...straps(tarp),
    pegs(tarp),
    ...guys(tarp),
  ];
}

/** A tarp that is too short whole, or else an end that it does not reach far enough over. */
function overhang({ berth, tarp, ridgeM, gatherM }: TarpCase): Finding[] {
  const limit = DEFAULTS["tarp.overhang_m"].value;
  const about = [tarp.item];
  const common = { source: "common-practice", sense: "at-least", unit: "m", about } as const;
  const whole = {
    ...common,
    subject: berthSubject(berth, "tarp"),
    demand: ridgeM,
    limit: gatherM + 2 * limit,
  };
  const short = kept({ ...whole, rule: "tarp.ridge-short" }, "look-again");
  if (short.verdict !== "clear") return [short];
  return ENDS.map((end) =>
    kept(
      {
        ...common,
        rule: OVERHANG[end],
        subject: berthSubject(berth, "tarp"),
        demand: tarp.overhangM[end],
        limit,
      },
      "look-again",
    ),
  );
}

const OVERHANG: Readonly<Record<End, RuleKey>> = { head: "tarp.overhang-head", foot: "tarp.overhang-foot" };

function headroom({ berth, tarp }: TarpCase): Finding {
  return kept(
    {
      rule: "tarp.headroom",
      source: "common-practice",
      subject: berthSubject(berth, "tarp"),
      sense: "at-least",
      demand: tarp.headroomM,
      limit: DEFAULTS["tarp.headroom_m"].value,
      unit: "m",
      about: [tarp.item],
    },
    "look-again",
  );
}

/** Cloth beyond head and feet on the diagonal, by the nearer, as much as is asked for beyond the gathers. */
function diagonal({ berth, tarp }: TarpCase): Finding {
  return kept(
    {
      rule: "tarp.diagonal",
      source: "common-practice",
      subject: berthSubject(berth, "tarp"),
      sense: "at-least",
      demand: Math.min(tarp.diagonalM.head, tarp.diagonalM.foot),
      limit: DEFAULTS["tarp.overhang_m"].value,
      unit: "m",
      about: [tarp.item],
    },
    "look-again",
  );
}

/** Each side and end that is not covered; where all are, one finding that says so by the worst. */
function wet({ berth, tarp, isRainy }: TarpCase): Finding[] {
  const worst = [...tarp.wetVerdicts].sort((a, b) => b.shareRatio - a.shareRatio);
  const told = worst.filter(({ covered }, index) => !covered || index === 0);
  return told.map(({ part, covered, shareRatio, lowerByM }) =>
    byRule(
      {
        rule: WET[part],
        source: "rain-shade",
        subject: berthSubject(berth, "tarp"),
        sense: "at-most",
        demand: shareRatio,
        limit: COVERED_SHARE,
        unit: "1",
        ...(lowerByM === undefined ? {} : { about: [lowerByM.toFixed(2)] }),
        ...(isRainy ? {} : { depth: "why" }),
      },
      covered || !isRainy ? "clear" : "look-again",
    ),
  );
}

const WET: Readonly<Record<WetPart, RuleKey>> = {
  left: "rain.left-side",
  right: "rain.right-side",
  head: "rain.head-end",
  foot: "rain.foot-end",
};

/** Straps against the cloth's ends, and drip lines that would hang outside. */
function straps({ berth, tarp, isRainy, cordClearM }: TarpCase): Finding[] {
  return ENDS.flatMap((end) => {
    const { strapClearM, insideM } = tarp.drip[end];
    const subject = berthSubject(berth, `${end}-strap`);
    const common = { source: "common-practice", subject, sense: "at-least", unit: "m" } as const;
    const rubs = kept(
      { ...common, rule: "strap.rubs-tarp", demand: strapClearM, limit: STRAP_CLEAR_M },
      "look-again",
    );
    const outside = kept(
      { ...common, rule: "drip-line.outside", demand: insideM, limit: 0 },
      isRainy ? "look-again" : "clear",
    );
    if (rubs.verdict !== "clear") return [rubs, outside];
    const crosses = kept(
      { ...common, rule: "strap.crosses-cord", demand: cordClearM[end], limit: STRAP_CLEAR_M },
      "look-again",
    );
    return [rubs, crosses, outside];
  });
}

/** The hardest guy against what a peg was measured to hold. A pull that any peg feels asks for that measure. */
function pegs({ berth, tarp, pegHoldsN }: TarpCase): Finding {
  const demand = Math.max(0, ...tarp.guys.map(({ pullN }) => pullN));
  const common = { subject: berthSubject(berth, "pegs"), sense: "at-most", demand, unit: "N" } as const;
  if (pegHoldsN !== undefined) {
    const told = compare({ ...common, rule: "peg.holding", source: "camp-file", limit: pegHoldsN });
    return told.verdict === "do-not-hang" ? { ...told, verdict: "look-again" } : told;
  }
  const limit = ASKS_FOR_MEASURE_N;
  return kept({ ...common, rule: "peg.not-measured", source: "common-practice", limit }, "look-again");
}

/** Below this, like 5 kg hanging, a peg in any ground that people camp on is not asked about [N]. */
const ASKS_FOR_MEASURE_N = 50;

/** For each kind of thing in the way the nearest, once. */
function guys({ berth, tarp }: TarpCase): Finding[] {
  const found = new Map<string, GuyConflict>();
  for (const conflict of tarp.guys.flatMap(({ conflicts }) => conflicts)) {
    const known = found.get(conflict.with);
    if (known === undefined || conflict.gapM < known.gapM) found.set(conflict.with, conflict);
  }
  return [...found.values()].map((conflict) =>
    byRule(
      {
        rule: IN_THE_WAY[conflict.with],
        source: "tarp-geometry",
        subject: berthSubject(berth, "guys"),
        sense: "at-least",
        demand: conflict.gapM,
        limit: CLEAR_M[conflict.with],
        unit: "m",
        about: [conflict.id],
      },
      "look-again",
    ),
  );
}

/** What a guy keeps from each [m]. */
const CLEAR_M: Readonly<Record<GuyConflict["with"], number>> = {
  stem: STEM_CLEAR_M,
  path: PATH_CLEAR_M,
  berth: 0,
  obstacle: PATH_CLEAR_M,
};

const IN_THE_WAY: Readonly<Record<GuyConflict["with"], RuleKey>> = {
  stem: "guy.stem",
  path: "guy.path",
  berth: "guy.neighbour",
  obstacle: "guy.obstacle",
};
