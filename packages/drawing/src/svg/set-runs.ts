import type { TextRun, TextRunItem } from "../scene/scene.ts";
import type { Words } from "../scene/text-item.ts";
import { cutToWidth } from "./cut-to-width.ts";

/** A run of a line with its words chosen. */
export interface SetRun {
  readonly run: TextRun;
  readonly words: string;
}

/** The runs of a line in words, cut at a grapheme with "…" where they are wider than the line may be. */
export function setRuns({ runs, maxWidth }: TextRunItem, { labels, measure }: Words): readonly SetRun[] {
  const said = runs.map((run) => ({ run, words: labels(run.item) }));
  if (maxWidth === undefined) return said;
  const kept: SetRun[] = [];
  let left = maxWidth;
  for (const { run, words } of said) {
    const width = measure(words, run.size, run.weight);
    if (width <= left) {
      kept.push({ run, words });
      left -= width;
      continue;
    }
    kept.push({ run, words: cutToWidth(words, left, (text) => measure(text, run.size, run.weight)) });
    break;
  }
  return kept;
}
