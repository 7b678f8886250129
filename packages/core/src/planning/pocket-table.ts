import { refuseAll, succeed, type Limit, type Outcome, type Refusal } from "../outcome/outcome.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import type { HangKit, HangPair } from "../statics/hang-screen.ts";
import { hang } from "../statics/hang.ts";
import type { Hang, HangInput } from "../statics/hang-types.ts";
import { toldBodyMark, type BodyMark } from "./body-mark.ts";
import { handMarks } from "./hand-marks.ts";

export interface PocketTableInput {
  readonly kit: HangKit;
  /** Both trunks' diameter [m]. */
  readonly trunkM: number;
  /** One step of whoever steps the span out [m]. */
  readonly stepM: number;
  /** Who sets the straps [m]. */
  readonly setterStatureM: number;
  readonly rules: Pick<HouseRules, "spanMinM" | "spanMaxM">;
}

/** One line: so many steps from trunk middle to trunk middle, and where the straps go; or what stands in the way. */
export interface PocketRow {
  readonly steps: number;
  readonly spanM: number;
  readonly hung?: PocketHang;
  readonly binds?: Limit;
}

export interface PocketHang {
  readonly head: PocketStrap;
  readonly foot: PocketStrap;
  readonly seatHeightM: number;
}

/** As hands set it, in steps of 5 cm. */
export interface PocketStrap {
  readonly strapHeightM: number;
  readonly mark: BodyMark;
  readonly strapLengthM: number;
}

/**
 * A table to carry: for each half step of one's own between two trees on level ground, where the straps go on the body
 * of whoever sets them, and how long they are let out.
 *
 * Shapes   one kit and sleeper → a row for each half step whose span lies in the house's range
 * Units    SI; steps counted from beside the middle of one trunk to beside the middle of the other
 * Holds    what `hang` can be asked, steps of 0.2 to 1.5 m; the rest is refused by field
 * Error    as `hang` set by `handMarks`, and a quarter of a step of span either way: 3 cm of strap height for each 10 cm
 * Source   hang-chain; body marks as `toldBodyMark`
 */
export function pocketTable(input: PocketTableInput): Outcome<readonly PocketRow[]> {
  const { kit, trunkM, stepM, setterStatureM, rules } = input;
  const failure = refuseAll([
    ...within("stepM", stepM, 0.2, 1.5),
    ...within("trunkM", trunkM, 0.03, 5),
    ...within("setterStatureM", setterStatureM, 0.7, 2.5),
  ]);
  if (failure !== undefined) return failure;
  const end = { dbhM: trunkM, elevationM: 0 };
  const halves = halfSteps(rules.spanMinM.value / stepM, rules.spanMaxM.value / stepM);
  const rows: PocketRow[] = [];
  for (const steps of halves) {
    const pair: HangPair = { spanM: steps * stepM, head: end, foot: end };
    const found = hang({ ...kit, ...pair });
    if (!found.ok && found.refusals.every(({ binds }) => binds === undefined)) return found;
    rows.push({ steps, spanM: pair.spanM, ...rowOf(found, { ...kit, ...pair }, setterStatureM) });
  }
  return succeed(rows);
}

function rowOf(
  found: Outcome<Hang>,
  request: HangInput,
  statureM: number,
): Pick<PocketRow, "hung" | "binds"> {
  if (!found.ok) {
    const binds = found.refusals.find((refusal) => refusal.binds !== undefined)?.binds;
    return binds === undefined ? {} : { binds };
  }
  const { seatHeightM } = found.value;
  const { headHeightM, footHeightM, headStrapM, footStrapM } = handMarks({ hang: found.value, request });
  const strap = (strapHeightM: number, strapLengthM: number): PocketStrap => ({
    strapHeightM,
    mark: toldBodyMark(strapHeightM, statureM),
    strapLengthM,
  });
  return {
    hung: { head: strap(headHeightM, headStrapM), foot: strap(footHeightM, footStrapM), seatHeightM },
  };
}

/** Every whole and half number from `least` to `most`, both included to 1e-9. */
function halfSteps(least: number, most: number): readonly number[] {
  const [first, last] = [Math.ceil(2 * least - 1e-9), Math.floor(2 * most + 1e-9)];
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) / 2);
}

function within(field: string, got: number, low: number, high: number): readonly Refusal[] {
  return got >= low && got <= high ? [] : [{ field, got, need: `from ${low} to ${high} m` }];
}
