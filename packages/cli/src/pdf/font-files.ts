import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const here = createRequire(import.meta.url);

/** DejaVu Sans: what papers are set in where it has the letters. */
export function dejaVuFile(bold: boolean): string {
  return here.resolve(`dejavu-fonts-ttf/ttf/DejaVuSans${bold ? "-Bold" : ""}.ttf`);
}

/** One file of a face that comes in slices, with the code points it is for. */
export interface FontSlice {
  readonly path: string;
  /** As the stylesheet writes them: "U+0-FF,U+131". */
  readonly unicodeRange: string;
  readonly ranges: readonly (readonly [first: number, last: number])[];
}

/** The upright slices of a package of web fonts, as its stylesheet lists them. */
export function fontSlices(packageName: string): readonly FontSlice[] {
  const sheet = here.resolve(`${packageName}/index.css`);
  const rules = readFileSync(sheet, "utf8").split("@font-face").slice(1);
  return rules.map((rule) => {
    const file = /url\(\.\/([^)]+)\)/.exec(rule)?.[1];
    const unicodeRange = /unicode-range:\s*([^;]+);/.exec(rule)?.[1];
    if (file === undefined || unicodeRange === undefined)
      throw new Error(`${sheet}: a face without its file`);
    return { path: join(dirname(sheet), file), unicodeRange, ranges: rangesOf(unicodeRange) };
  });
}

function rangesOf(unicodeRange: string): [number, number][] {
  return unicodeRange.split(",").map((range) => {
    const [first = "", last = first] = range.trim().slice(2).split("-");
    return [Number.parseInt(first, 16), Number.parseInt(last, 16)];
  });
}

/** Whether a slice is for this code point. */
export function isFor({ ranges }: FontSlice, codePoint: number): boolean {
  return ranges.some(([first, last]) => first <= codePoint && codePoint <= last);
}
