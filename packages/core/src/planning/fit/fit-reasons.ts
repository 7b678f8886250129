import { byRule, compare, kept, type Finding } from "../../outcome/finding.ts";
import type { Night, Sleeper } from "../../plan/camp.ts";
import type { HouseRule } from "../../plan/house-rules.ts";
import type { Hammock, Suspension, Tarp, UnderInsulation } from "../../plan/kit.ts";
import { CLOTH_OVER_STATURE_M } from "../assumed-kit.ts";
import { wantedRidgeM } from "../store/deal-hang-kit.ts";
import type { SpanReach } from "./span-reach.ts";

/** A hammock for a sleeper: body mass against the maker's limit, cloth against stature. */
export function hammockReasons(sleeper: Sleeper, hammock: Hammock): Finding[] {
  const subject = subjectOf(sleeper);
  const about = [hammock.id];
  const cloth = kept(
    {
      rule: "hammock.length",
      source: "common-practice",
      subject,
      sense: "at-least",
      demand: hammock.lengthM,
      limit: sleeper.statureM + CLOTH_OVER_STATURE_M,
      unit: "m",
      about,
    },
    "look-again",
  );
  const { maxUserKg } = hammock;
  if (maxUserKg === undefined) return [cloth];
  const load = compare({
    rule: "part.user-weight",
    source: "maker-plate",
    subject,
    sense: "at-most",
    demand: sleeper.massKg,
    limit: maxUserKg,
    unit: "kg",
    about,
  });
  return [load, cloth];
}

/**
 * A suspension: as wide as the house asks; for a range of spans, and for the stoutest trunk: a big one eats a short tree strap.
 * Without a hammock nobody knows its spans.
 */
export function suspensionReasons(
  sleeper: Sleeper,
  { id, strapWidthM }: Suspension,
  least: HouseRule,
  reach: SpanReach | undefined,
): Finding[] {
  const of = { subject: subjectOf(sleeper), sense: "at-least", unit: "m", about: [id] } as const;
  const width = {
    rule: "strap.width",
    source: "house-rules",
    demand: strapWidthM,
    limit: least.value,
  } as const;
  const wide = kept({ ...of, ...width }, "look-again");
  if (reach === undefined) return [wide];
  const common = { ...of, source: "hang-chain" } as const;
  return [
    wide,
    kept({ rule: "fit.spans", ...common, demand: reach.servedM, limit: reach.askedM }, "look-again"),
    kept({ rule: "fit.girth", ...common, demand: reach.girthM, limit: reach.girthAskedM }, "look-again"),
  ];
}

/** A tarp's ridge over the hammock that it covers. */
export function tarpReasons(
  sleeper: Sleeper,
  tarp: Tarp,
  hammock: Hammock | undefined,
  night: Night | undefined,
): Finding[] {
  const limit = wantedRidgeM(hammock, night);
  return [
    kept(
      {
        rule: "fit.tarp-ridge",
        source: "common-practice",
        subject: subjectOf(sleeper),
        sense: "at-least",
        demand: tarp.ridgeM,
        limit,
        unit: "m",
        about: [tarp.id],
      },
      "look-again",
    ),
  ];
}

/** Whether an under layer goes with the hammock: a mat wants a double layer, an underblanket its length and room below a net. */
export function underReasons(
  sleeper: Sleeper,
  under: UnderInsulation,
  hammock: Hammock | undefined,
): Finding[] {
  const common = { source: "common-practice", subject: subjectOf(sleeper), about: [under.id] } as const;
  const reasons: Finding[] = [];
  if (under.form === "mat" && hammock !== undefined) {
    const layers = { demand: hammock.layers, limit: 2, unit: "1", sense: "at-least" } as const;
    reasons.push(kept({ rule: "fit.mat-layers", ...common, ...layers }, "look-again"));
  }
  if (under.form === "underblanket" && under.lengthM !== undefined) {
    const length = { demand: under.lengthM, limit: COVERED_SHARE * sleeper.statureM, unit: "m" } as const;
    reasons.push(kept({ rule: "fit.under-length", ...common, ...length, sense: "at-least" }, "look-again"));
  }
  if (under.fitsNet === false && hammock?.net === true) {
    const net = { demand: 1, limit: 0, unit: "1", sense: "at-most" } as const;
    reasons.push(byRule({ rule: "fit.net", ...common, ...net }, "look-again"));
  }
  return reasons;
}

function subjectOf({ id }: Sleeper): string {
  return `sleeper/${id}`;
}

/** Shoulders to calves of a stature; feet lie on a pad. Source: common-practice. */
const COVERED_SHARE = 0.75;
