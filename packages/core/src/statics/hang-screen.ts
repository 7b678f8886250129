import type { Limit } from "../outcome/outcome.ts";
import { radians, type Radians } from "../quantity/angle.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { newMarch, marchLinks, startMarch } from "./chain.ts";
import { CLOTH_CELLS } from "./hang-constants.ts";
import { furthestAngle, hangCore } from "./hang-core.ts";
import { hangInputRefusals } from "./hang-input.ts";
import type { Lying } from "./hang-lying.ts";
import { lyingAt } from "./hang-lying.ts";
import { hangRig, type HangRig } from "./hang-rig.ts";
import type { HangInput } from "./hang-types.ts";

/** One kit with one sleeper, as it would hang in many places. */
export type HangKit = Omit<HangInput, "spanM" | "head" | "foot">;

export type HangPair = Pick<HangInput, "spanM" | "head" | "foot">;

/** Whether a pair serves a kit: how far the angle has to give way [rad], or which limits forbid it. */
export type ScreenedHang =
  | { readonly serves: true; readonly angleOff: Radians }
  | { readonly serves: false; readonly binds: readonly Limit[] };

/**
 * Screens many pairs for one kit and sleeper; answers as `hang` would, without ranges and drawing.
 *
 * The loaded hammock between its gathers does not depend on the trees, so its flattest and steepest forms
 * are solved once. From them four closed-form bounds throw out what cannot serve: room for the straps,
 * shortest and longest strap, and the height each strap needs at the least. Whatever they let through is
 * solved by `hangCore`; they never throw out a pair that it would serve.
 *
 * Units    SI; about 10 µs a pair that passes, under 0.2 µs one that a bound throws out
 * Source   hang-chain
 */
export function screenHang(kit: HangKit): (pair: HangPair) => ScreenedHang {
  const bad = hangInputRefusals({ ...kit, ...ANY_PAIR });
  if (bad.length > 0) return () => ({ serves: false, binds: bad.flatMap(({ binds }) => binds ?? []) });
  const rig = hangRig(kit);
  const edges = { flatter: furthestAngle(rig, kit, "flatter"), steeper: furthestAngle(rig, kit, "steeper") };
  const flattest = formOf(rig, kit, edges.flatter);
  const steepest = formOf(rig, kit, edges.steeper);
  return (pair) => {
    const bound = boundBy(kit, pair, flattest, steepest);
    if (bound !== undefined) return { serves: false, binds: [bound] };
    const core = hangCore(rig, { ...kit, ...pair }, edges);
    if (!core.ok) return { serves: false, binds: core.refusals.flatMap(({ binds }) => binds ?? []) };
    return { serves: true, angleOff: radians(core.value.trial.straps.meanAngle - kit.targets.angle) };
  };
}

const ANY_PAIR: HangPair = {
  spanM: 4,
  head: { dbhM: 0.3, elevationM: 0 },
  foot: { dbhM: 0.3, elevationM: 0 },
};

/** A loaded hammock with its lowest node. */
interface Form {
  readonly lying: Lying;
  /** Lowest node from the head gather: level distance, and depth below it [m]. */
  readonly lowDxM: number;
  readonly lowDepthM: number;
}

function formOf(rig: HangRig, kit: HangKit, meanAngle: number): Form {
  const lying = lyingAt(rig, meanAngle, kit.targets.footRaiseM);
  const march = newMarch();
  startMarch(march, lying.alongN - lying.ridgeAlongN, -lying.headDownN - lying.ridgeUpN);
  let [lowDxM, lowDepthM] = [0, 0];
  for (let link = 1; link <= CLOTH_CELLS; link++) {
    marchLinks(rig.lying, march, link, link + 1);
    if (-march.zM > lowDepthM) [lowDxM, lowDepthM] = [march.xM, -march.zM];
  }
  return { lying, lowDxM, lowDepthM };
}

function boundBy(kit: HangKit, pair: HangPair, flattest: Form, steepest: Form): Limit | undefined {
  const clearM = pair.spanM - (pair.head.dbhM + pair.foot.dbhM) / 2;
  const longestRunM = (clearM - steepest.lying.gatherDxM) / 2;
  if (!(longestRunM > 0)) return "trees-too-close";
  const { minM, maxM } = kit.suspension;
  if (shortStrap(steepest.lying, longestRunM) < minM - LENGTH_SLACK_M) return "sling-shortest";
  const runM = (clearM - flattest.lying.gatherDxM) / 2;
  if (maxM !== undefined && longStrap(flattest.lying, runM) > maxM + LENGTH_SLACK_M) return "sling-longest";
  return heightBound(kit, pair, flattest, runM);
}

/** The strap heights that keep the hammock's lowest node off the ground, flattest form, against reach and cap. */
function heightBound(kit: HangKit, pair: HangPair, form: Form, runM: number): Limit | undefined {
  const { reachM = Infinity, strapHeightMaxM = Infinity, lowPointMinM } = kit.limits;
  const { lying, lowDxM, lowDepthM } = form;
  const fallM = pair.foot.elevationM - pair.head.elevationM;
  const lowX = pair.head.dbhM / 2 + runM + lowDxM;
  const groundAtLowM = (fallM * lowX) / pair.spanM;
  const gatherM = groundAtLowM + lowPointMinM + lowDepthM;
  const headM = gatherM + (runM * lying.headDownN) / lying.alongN;
  const footM = gatherM + lying.gatherDzM + (runM * lying.footDownN) / lying.alongN - fallM;
  const needM = Math.max(headM, footM) - LENGTH_SLACK_M;
  if (needM > reachM) return "strap-reach";
  return needM > strapHeightMaxM ? "strap-height-cap" : undefined;
}

function shortStrap({ alongN, headDownN, footDownN }: Lying, runM: number): number {
  const downN = Math.min(headDownN, footDownN);
  return (runM * Math.sqrt(alongN * alongN + downN * downN)) / alongN;
}

function longStrap({ alongN, headDownN, footDownN }: Lying, runM: number): number {
  const downN = Math.max(headDownN, footDownN);
  return (runM * Math.sqrt(alongN * alongN + downN * downN)) / alongN;
}
