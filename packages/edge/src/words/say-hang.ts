import { handMarks, type Camp, type PlannedBerth } from "@nightspan/core";
import { namesOf } from "./names.ts";
import { atBodyMark, handDifference, handLength, length, toHandStep } from "./quantities.ts";

/** "Tie the head strap round K12 at your chin, 1.50 m up. Let out 0.70 m from bark to hammock." */
export function headSentence(berth: PlannedBerth, camp: Camp): string {
  const { headHeightM, headStrapM } = handMarks(berth);
  return `${tie("head", berth, camp)} ${height(headHeightM, berth, camp)}. ${letOut(headStrapM, berth, camp)}`;
}

/** The same for the foot. Where the ground is not surveyed, its height is told from level with the head strap. */
export function footSentence(berth: PlannedBerth, camp: Camp): string {
  const { footHeightM, footOverHeadM, footStrapM } = handMarks(berth);
  const level = levelWords(footOverHeadM);
  const where = berth.groundKnown
    ? `${height(footHeightM, berth, camp)}: ${level}, sighted level across`
    : `${level}, sighted level across`;
  return `${tie("foot", berth, camp)} ${where}. ${letOut(footStrapM, berth, camp)}`;
}

/** "Bring 2 × 2.05 m of webbing, turns and knots within it."; nothing where slings are used. */
export function webbingSentence(berth: PlannedBerth, camp: Camp): string | undefined {
  if (slings(berth, camp)) return undefined;
  const { head, foot } = berth.hang;
  const [one, other] = [head, foot].map(({ webbingM }) => length(upToHandStep(webbingM)));
  return `Bring ${one === other ? `2 × ${one}` : `${one} and ${other}`} of webbing, turns and knots within it.`;
}

/** Whole 5 cm, never less. */
function upToHandStep(lengthM: number): number {
  return Math.ceil(lengthM * 20 - 1e-6) / 20;
}

/** "Sit in the middle: the cloth is to come 45 cm above the ground." */
export function sitSentence({ hang }: PlannedBerth): string {
  return `Sit down slowly in the middle: the cloth is to come ${handDifference(hang.seatHeightM)} above the ground.`;
}

/** "20 cm higher than the head strap". */
export function levelWords(footOverHeadM: number): string {
  const step = toHandStep(footOverHeadM);
  if (step === 0) return "level with the head strap";
  return `${handDifference(Math.abs(step))} ${step > 0 ? "higher" : "lower"} than the head strap`;
}

function tie(end: "head" | "foot", berth: PlannedBerth, camp: Camp): string {
  const tag = namesOf(camp).tree(end === "head" ? berth.headTree : berth.footTree);
  return `${slings(berth, camp) ? "Wrap" : "Tie"} the ${end} strap round ${tag}`;
}

function height(strapHeightM: number, berth: PlannedBerth, camp: Camp): string {
  const setter = camp.sleepers.find(({ id }) => id === berth.setBy);
  const up = `${handLength(strapHeightM)} up`;
  if (setter === undefined) return up;
  const whose = berth.setBy === berth.sleeper ? "your" : `${setter.name}'s`;
  return `${atBodyMark(strapHeightM, setter.statureM, whose)}, ${up}`;
}

function letOut(strapLengthM: number, berth: PlannedBerth, camp: Camp): string {
  const what = slings(berth, camp) ? "its sling out to" : "out";
  return `Let ${what} ${handLength(strapLengthM)} from bark to hammock.`;
}

function slings({ kit }: PlannedBerth, camp: Camp): boolean {
  const item = camp.kit.find(({ id }) => id === kit.suspension);
  return item?.kind === "suspension" && item.type === "whoopie-sling";
}
