const SIGNS = new Intl.Segmenter("en", { granularity: "grapheme" });
const WIDE =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\u3000-\u303f\uff01-\uff60]|\p{Extended_Pictographic}/u;
const NO_WIDTH = /^[\p{Mn}\p{Me}\p{Cf}\p{Cc}]+$/u;
const LETTERS = /\p{L}/gu;
const SPACING_MARKS = /\p{Mc}/gu;

/** Signs that take one column each, whatever stands beside them. */
const PLAIN = /^[ -~\u00a0-\u00ac\u00ae-\u024f\u2010-\u2027\u2212\u00bd]*$/;

/** Columns that a text takes on a terminal. */
export function displayWidth(text: string): number {
  if (PLAIN.test(text)) return text.length;
  let columns = 0;
  for (const { segment } of SIGNS.segment(text)) columns += signWidth(segment);
  return columns;
}

function signWidth(sign: string): number {
  if (NO_WIDTH.test(sign)) return 0;
  if (WIDE.test(sign)) return 2;
  return Math.max(1, sign.match(LETTERS)?.length ?? 0) + (sign.match(SPACING_MARKS)?.length ?? 0);
}

/** The text with spaces after it up to a width. */
export function padded(text: string, columns: number): string {
  return text + " ".repeat(Math.max(0, columns - displayWidth(text)));
}

/** Lines of at most so many columns, broken at spaces; spaces at the start stay, later lines are indented. */
export function wrapped(text: string, columns: number, indent = ""): readonly string[] {
  const body = text.trimStart();
  const lead = text.slice(0, text.length - body.length);
  const lines: string[] = [];
  let line = lead;
  let taken = displayWidth(lead);
  for (const word of body.split(" ")) {
    const isFirst = line === lead || line === indent;
    const wide = displayWidth(word);
    if (!isFirst && taken + 1 + wide > columns) {
      lines.push(line);
      line = indent + word;
      taken = displayWidth(indent) + wide;
    } else {
      line = isFirst ? line + word : `${line} ${word}`;
      taken += (isFirst ? 0 : 1) + wide;
    }
  }
  return [...lines, line];
}
