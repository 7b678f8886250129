import {
  inDegrees,
  radians,
  type Adjustment,
  type AsHungCheck,
  type HangState,
  type SymptomAnswer,
  type SymptomFigure,
  type UnsureQuantity,
  type Verdict,
} from "@nightspan/core";
import { inFileUnit, quantityName } from "./hang-file.ts";
import { convert, present } from "./optional.ts";
import { findingFile } from "./finding-file.ts";
import type { FindingFile } from "./plan-schema.ts";
import { tidy } from "./tidy.ts";

/** How a berth hangs, as `adjust --json` prints it. */
export interface StateFile {
  readonly span_m: number;
  readonly head: StrapStateFile;
  readonly foot: StrapStateFile;
  readonly seat_height_m: number;
  readonly low_point_m: number;
  readonly foot_raise_m: number;
}

export interface StrapStateFile {
  readonly strap_height_m: number;
  readonly strap_length_m: number;
  readonly angle_deg: number;
  readonly pull_n: number;
}

export interface AdjustFile {
  readonly berth: string;
  readonly state: StateFile;
  readonly band: Readonly<Record<string, readonly [number, number]>>;
  readonly doubts: readonly string[];
  readonly off: readonly { readonly quantity: string; readonly planned: number; readonly found: number }[];
  readonly next: Adjustment["next"];
  readonly instruction?: NonNullable<Adjustment["instruction"]>;
  readonly predicted: StateFile;
  readonly verdict: Verdict;
  readonly trees_looked_at: { readonly done: number; readonly of: number };
  readonly findings: readonly FindingFile[];
  readonly misfit: number;
  readonly symptom?: SymptomFile;
}

export interface SymptomFile {
  readonly name: SymptomAnswer["symptom"];
  readonly figures: readonly {
    readonly figure: SymptomFigure["figure"];
    readonly value: number;
    readonly unit: "m" | "deg" | "1";
    readonly low?: number;
    readonly high?: number;
  }[];
  readonly advice: SymptomAnswer["advice"];
}

/** The as-hung check in the form of `adjust --json`: metres, degrees, newtons. */
export function adjustFile(berth: string, check: AsHungCheck<FindingFile>): AdjustFile {
  const { adjustment, standing, symptom } = check;
  return present({
    berth,
    state: stateFile(adjustment.state),
    band: bandFile(adjustment.band),
    doubts: adjustment.doubts.map(quantityName),
    off: adjustment.off.map(({ quantity, planned, found }) => ({
      quantity: quantityName(quantity),
      planned: tidy(planned),
      found: tidy(found),
    })),
    next: adjustment.next,
    instruction: adjustment.instruction,
    predicted: stateFile(adjustment.predicted),
    verdict: check.verdict,
    trees_looked_at: check.treesLookedAt,
    findings: [
      ...adjustment.findings.map(findingFile),
      ...standing.map(({ finding, verdict }) => ({ ...finding, verdict })),
    ],
    misfit: tidy(adjustment.misfit),
    symptom: symptom === undefined ? undefined : symptomFile(symptom),
  });
}

function stateFile({ spanM, head, foot, seatHeightM, lowPointM, footRaiseM }: HangState): StateFile {
  return {
    span_m: tidy(spanM),
    head: strapFile(head),
    foot: strapFile(foot),
    seat_height_m: tidy(seatHeightM),
    low_point_m: tidy(lowPointM),
    foot_raise_m: tidy(footRaiseM),
  };
}

function strapFile({ strapHeightM, strapLengthM, angle, pullN }: HangState["head"]): StrapStateFile {
  return {
    strap_height_m: tidy(strapHeightM),
    strap_length_m: tidy(strapLengthM),
    angle_deg: tidy(inDegrees(angle)),
    pull_n: tidy(pullN),
  };
}

function bandFile(band: Adjustment["band"]): AdjustFile["band"] {
  return Object.fromEntries(
    UNSURE.map((quantity) => {
      const [low, high] = band[quantity];
      return [quantityName(quantity), [inFileUnit(quantity, low), inFileUnit(quantity, high)]];
    }),
  );
}

const UNSURE: readonly UnsureQuantity[] = ["head.angle", "foot.angle", "seatHeightM", "footRaiseM"];

function symptomFile({ symptom, figures, advice }: Omit<SymptomAnswer, "adjustment">): SymptomFile {
  return {
    name: symptom,
    figures: figures.map(({ figure, value, unit, low, high }) => {
      const written = (amount: number) => tidy(unit === "rad" ? inDegrees(radians(amount)) : amount);
      return present({
        figure,
        value: written(value),
        unit: unit === "rad" ? ("deg" as const) : unit,
        low: convert(low, written),
        high: convert(high, written),
      });
    }),
    advice,
  };
}
