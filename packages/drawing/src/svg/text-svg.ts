import type { TextRunItem } from "../scene/scene.ts";
import { attribute, marks, paint, type Look } from "./attributes.ts";
import { direction } from "./direction.ts";
import { fontStack, LATIN_STACK } from "./font-stack.ts";
import { escaped, fixed } from "./numbers.ts";
import { setRuns, type SetRun } from "./set-runs.ts";

/** One line of text. A name that runs from right to left is one run of its own, kept apart from the rest. */
export function textSvg(item: TextRunItem, look: Look): string {
  const runs = setRuns(item, look);
  const [first, ...others] = runs;
  if (first === undefined) return "";
  const whole = runs.map(({ words }) => words).join("");
  const rightToLeft = others.length === 0 && direction(whole) === "rtl";
  const rim: RimPaint = item.halo === undefined ? {} : { stroke: item.halo, width: first.run.size / 4 };
  const opening = [
    `<text${marks({ ...item, ...rim }, look)}`,
    attribute("x", fixed(item.at[0])),
    attribute("y", fixed(item.at[1])),
    paint({ fill: item.fill, ...rim }, look),
    item.halo === undefined ? "" : attribute("paint-order", "stroke"),
    anchor(item.anchor, rightToLeft),
    rightToLeft ? attribute("direction", "rtl") + attribute("unicode-bidi", "plaintext") : "",
    runAttributes(first),
  ].join("");
  if (others.length === 0) return `${opening}>${escaped(first.words)}</text>\n`;
  const spans = runs.map((run) => `<tspan${runAttributes(run)}>${escaped(run.words)}</tspan>`);
  return `${opening} xml:space="preserve">${spans.join("")}</text>\n`;
}

interface RimPaint {
  readonly stroke?: TextRunItem["fill"];
  readonly width?: number;
}

function runAttributes({ run, words }: SetRun): string {
  const stack = fontStack(words, "name" in run.item);
  return [
    attribute("font-size", fixed(run.size)),
    run.weight === 400 ? "" : attribute("font-weight", String(run.weight)),
    stack === LATIN_STACK ? "" : attribute("font-family", stack),
  ].join("");
}

/** Start is the right end for a line that runs from right to left. */
function anchor(wanted: TextRunItem["anchor"], rightToLeft: boolean): string {
  if (wanted === "middle") return attribute("text-anchor", "middle");
  const end = (wanted === "end") !== rightToLeft;
  return end ? attribute("text-anchor", "end") : "";
}
