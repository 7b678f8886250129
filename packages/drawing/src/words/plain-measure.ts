import type { Measure, Weight } from "../scene/text-item.ts";
import { WIDTH_RUNS } from "./width-runs.ts";

/**
 * The width of a text by the font's own table, between weights in proportion; scripts the table lacks
 * are taken broad rather than narrow: Chinese, Japanese and Korean a full size, others two thirds.
 */
export const plainMeasure: Measure = (text, size, weight) => {
  let sum = 0;
  for (const letter of text) sum += advance(letter.codePointAt(0) ?? 0, letter, weight);
  return (sum * size) / 1000;
};

function advance(code: number, letter: string, weight: Weight): number {
  for (const run of WIDTH_RUNS) {
    const regular = run.regular[code - run.first];
    const bold = run.bold[code - run.first];
    if (regular === undefined || bold === undefined) continue;
    return regular + ((bold - regular) * (weight - 400)) / 300;
  }
  if (NO_WIDTH.test(letter)) return 0;
  return WIDE.test(letter) ? 1000 : 660;
}

const NO_WIDTH = /[\p{Mn}\p{Me}\p{Cf}]/u;
const WIDE = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u;
