import type { Item } from "./scene.ts";
import { text, type TextStyle } from "./shapes.ts";
import type { TextItem, Weight, Words } from "./text-item.ts";

/** A text broken into lines no wider than `width`; a word that is wider alone is broken between graphemes. */
export function brokenLines(
  item: TextItem,
  width: number,
  size: number,
  weight: Weight,
  words: Words,
): string[] {
  const lines: string[] = [];
  let line = "";
  const fits = (text: string): boolean => words.measure(text, size, weight) <= width;
  for (const piece of words.labels(item).split(" ")) {
    const longer = line === "" ? piece : `${line} ${piece}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    const parts = fits(piece) ? [piece] : brokenWord(piece, fits);
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? "";
  }
  return keptApart(line === "" ? lines : [...lines, line]);
}

/** What is kept apart and goes on in the next line is closed at the end of one and opened again in the next. */
function keptApart(lines: readonly string[]): string[] {
  let open = "";
  return lines.map((line) => {
    const whole = open + line;
    const begun = whole.match(/[\u2066-\u2068]/g) ?? [];
    const missing = begun.length - (whole.match(/\u2069/g)?.length ?? 0);
    open = missing > 0 ? (begun.at(-1) ?? "") : "";
    return missing > 0 ? `${whole}\u2069` : whole;
  });
}

function brokenWord(word: string, fits: (text: string) => boolean): string[] {
  const parts: string[] = [];
  let part = "";
  for (const { segment } of new Intl.Segmenter("en").segment(word)) {
    if (part !== "" && !fits(part + segment)) {
      parts.push(part);
      part = "";
    }
    part += segment;
  }
  return [...parts, part];
}

export interface WrappedStyle extends TextStyle {
  readonly width: number;
  readonly leading: number;
  /** The last line that fits is cut where there would be more. */
  readonly mostLines?: number;
}

export interface Wrapped {
  readonly items: readonly Item[];
  readonly lines: number;
  /** Base line of the last line. */
  readonly bottom: number;
}

/** A text set in lines from the base line at `y` down. */
export function wrapped(
  item: TextItem,
  [x, y]: readonly [number, number],
  style: WrappedStyle,
  words: Words,
): Wrapped {
  const { width, leading, mostLines = Infinity, ...rest } = style;
  const all = brokenLines(item, width, rest.size, rest.weight ?? 500, words);
  const kept = all.slice(0, mostLines);
  const over = all.slice(mostLines - 1).join(" ");
  const items = kept.map((line, index) => {
    const last = index === kept.length - 1 && all.length > kept.length;
    return text(
      { said: last ? over : line },
      [x, y + index * leading],
      last ? { ...rest, maxWidth: width } : rest,
    );
  });
  return { items, lines: kept.length, bottom: y + (kept.length - 1) * leading };
}
