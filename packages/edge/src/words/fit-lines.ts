import type { FitChoice, FitPart, PersonFit, StoreFit } from "@nightspan/core";
import { ENGLISH } from "@nightspan/drawing";
import type { Names } from "./names.ts";
import { day } from "./quantities.ts";
import { sayFinding } from "./say-finding.ts";

/** What each person takes out of the store, part by part in the order of choosing, with the second choice and why. */
export function fitLines(fit: StoreFit | undefined, names: Names): readonly string[] {
  const people = fit?.people ?? [];
  return [
    ...people.flatMap((person) => personLines(person, names)),
    ...(people.length === 0 ? [] : [WARMTH_FOR]),
  ];
}

const WARMTH_FOR = "What is enough tonight is not told of anybody ill, wet, exhausted or after alcohol.";

function personLines({ sleeper, parts, small, slip }: PersonFit, names: Names): readonly string[] {
  const things = small.map(({ what, count }) => `${count} × ${ENGLISH[`packed.${what}`]}`).join(", ");
  return [
    `${names.sleeper(sleeper)}:`,
    ...parts.flatMap((part) => partLines(part, names)).map((line) => `  ${line}`),
    ...(things === "" ? [] : [`  with ${things}`]),
    `  Hang it once at home.${slip.backOn === undefined ? "" : ` Back by ${day(slip.backOn)}.`}`,
  ];
}

function partLines({ kind, choices, overkill, lacking }: FitPart, names: Names): readonly string[] {
  const [first, second] = choices;
  const name = ENGLISH[`packed.${kind}`];
  if (first === undefined) {
    const why = [...new Set(lacking.map((finding) => sayFinding(finding, names)))];
    return [[`${name}: nothing of the store serves.`, ...why].join(" ")];
  }
  const more = overkill.map(({ item }) => item);
  const told = [
    `${name}: ${pieceOf(first)}`,
    second === undefined ? "" : `, or ${pieceOf(second)}`,
    more.length === 0 ? "" : `; more than is needed: ${[...new Set(more)].join(", ")}`,
  ].join("");
  const open = first.reasons.filter(({ verdict }) => verdict !== "clear");
  const words = [...new Set(open.map((finding) => sayFinding(finding, names)))];
  return [[`${told}.`, ...words].join(" ")];
}

function pieceOf({ item, number }: FitChoice): string {
  return number === undefined ? item : `${item} no. ${number}`;
}
