import { angleCard, type PocketRow, type PocketStrap } from "@nightspan/core";
import { CAUTIONS, DEFERS_TO } from "./cautions.ts";
import { displayWidth, padded } from "./display-width.ts";
import { angle, handDifference, handLength, length, shortBodyMark, steps } from "./quantities.ts";
import { sayLimit } from "./say-limit.ts";
import { HOW_TO_COUNT } from "./steps-between.ts";
import { section, type SummaryLine } from "./summary-line.ts";

/** A table to carry: steps from trunk middle to trunk middle on level ground, and where the straps go on one's own body. */
export function pocketLines(rows: readonly PocketRow[], statureM: number): readonly SummaryLine[] {
  const table = aligned([HEADINGS, ...rows.map((row) => cells(row, statureM))]);
  return [
    { kind: "verdict", text: `Marks for a stature of ${length(statureM)}; steps ${HOW_TO_COUNT}.` },
    { kind: "beside", text: "Level ground. Look up first, and look at both trees: a table knows neither." },
    ...section("Where the straps go", table, "row"),
    ...section("How flat a strap hangs: along one metre of level, it falls", cardLines(), "row"),
    ...section("Cautions", [...CAUTIONS.map(({ text }) => text), DEFERS_TO]),
  ];
}

/** "30°  58 cm": read off the loaded strap with a folded card or two sticks. */
export function cardLines(): readonly string[] {
  return angleCard().map(({ angle: below, fallM }) => `${angle(below)}  ${(fallM * 100).toFixed(0)}\u00a0cm`);
}

const HEADINGS = ["steps", "span", "head strap", "foot strap", "out", "foot over head"];

function cells({ steps: count, spanM, hung, binds }: PocketRow, statureM: number): readonly string[] {
  const paced = [steps(count, 1), length(spanM)];
  if (hung === undefined) return [...paced, binds === undefined ? "no" : sayLimit(binds)];
  const { head, foot } = hung;
  const mark = ({ strapHeightM }: PocketStrap): string =>
    `${shortBodyMark(strapHeightM, statureM)}, ${handLength(strapHeightM)}`;
  const over = handDifference(foot.strapHeightM - head.strapHeightM);
  return [...paced, mark(head), mark(foot), handLength(head.strapLengthM), over];
}

/** Columns as wide as their widest cell; the last cell of a row is left as it is. */
function aligned(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = HEADINGS.map((_, column) =>
    Math.max(...rows.map((row) => (column < row.length - 1 ? displayWidth(row[column] ?? "") : 0))),
  );
  return rows.map((row) =>
    row
      .map((cell, column) => (column < row.length - 1 ? padded(cell, widths[column] ?? 0) : cell))
      .join("  ")
      .trimEnd(),
  );
}
