import { handMarks, type Camp, type HalfWarmth, type Plan, type PlannedBerth } from "@nightspan/core";
import { displayWidth, padded } from "./display-width.ts";
import { inColumns } from "./in-columns.ts";
import { namesOf, type Names } from "./names.ts";
import { handDifference, handLength, shortBodyMark, toHandStep } from "./quantities.ts";
import { fencedName } from "./plain-text.ts";
import { ENOUGH } from "./say-warmth.ts";
import { HOW_TO_COUNT, stepsBetween } from "./steps-between.ts";

const HEADS = [
  "no.",
  "name",
  "head to foot",
  "steps",
  "HEAD strap",
  "FOOT strap, level across",
  "under / over",
];

/**
 * One line a berth under one line of headings, in columns; two lines a berth where the columns given are too few.
 * Marks are on the body of whoever sets the strap.
 */
export function berthTable(plan: Plan, camp: Camp, columns = Infinity): readonly string[] {
  if (plan.berths.length === 0) return [];
  const names = namesOf(camp);
  const rows = plan.berths.map((berth) => cells(berth, camp, names));
  const table = inColumns([HEADS, ...rows]);
  const fits = table.every((line) => displayWidth(line) <= columns);
  const helped = plan.berths.some(({ setBy, sleeper }) => setBy !== sleeper);
  return [
    ...(fits ? table : rows.flatMap((row) => stacked(row, columns - INDENT))),
    `steps of the sleeper, ${HOW_TO_COUNT}`,
    ...(plan.berths.some(({ warmth }) => warmth !== undefined) ? [WARMTH_FOR] : []),
    ...(helped ? ["* set by the name behind it, on whose body the mark is"] : []),
  ];
}

const WARMTH_FOR = "under / over: not for anybody ill, wet, exhausted or after alcohol";

/** Columns that a row stands in from the left. */
const INDENT = 2;

/** Two lines a berth, and what is under and over in a third where two would be too long. */
function stacked(row: readonly string[], columns: number): readonly string[] {
  const [id = "", name, trees, steps, head, foot, kit = ""] = row;
  const under = " ".repeat(Math.max(2, id.length) + 2);
  const first = `${padded(id, 2)}  ${name}: ${trees}, ${steps} steps`;
  const marks = `${under}HEAD ${head}; FOOT ${foot}`;
  if (kit === "") return [first, marks];
  const both = `${marks}; ${kit}`;
  return displayWidth(both) <= columns ? [first, both] : [first, marks, `${under}${kit}`];
}

function cells(berth: PlannedBerth, camp: Camp, names: Names): readonly string[] {
  return [
    berth.id,
    fencedName(names.sleeper(berth.sleeper)),
    `${names.tree(berth.headTree)} to ${names.tree(berth.footTree)}`,
    stepsBetween(berth, camp) + (berth.stepItOut ? ", step it out" : ""),
    headMark(berth, camp, names),
    footMark(berth),
    halves(berth),
  ];
}

/** What is under and over, and where it was worked out whether that is enough tonight. */
function halves({ kit: { under, over }, warmth }: PlannedBerth): string {
  if (under === undefined && over === undefined && warmth === undefined) return "";
  const told = (item = "none", half?: HalfWarmth) =>
    half === undefined ? item : `${item}: ${ENOUGH[half.enough]}`;
  return `${told(under, warmth?.under)} / ${told(over, warmth?.over)}`;
}

function headMark(berth: PlannedBerth, camp: Camp, names: Names): string {
  const { setBy, sleeper } = berth;
  const { headHeightM } = handMarks(berth);
  const setter = camp.sleepers.find(({ id }) => id === setBy);
  const up = handLength(headHeightM);
  if (setter === undefined) return up;
  const mark = `${up}, ${shortBodyMark(headHeightM, setter.statureM)}`;
  return setBy === sleeper ? mark : `${mark} *${fencedName(names.sleeper(setBy))}`;
}

function footMark(berth: PlannedBerth): string {
  const { footOverHeadM, footHeightM } = handMarks(berth);
  const over = toHandStep(footOverHeadM);
  const level = over === 0 ? "level" : `${handDifference(Math.abs(over))} ${over > 0 ? "higher" : "lower"}`;
  return berth.groundKnown ? `${level} (${handLength(footHeightM)} up)` : level;
}
