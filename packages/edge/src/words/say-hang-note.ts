import type { BorderNote, HangNote } from "@nightspan/core";
import { sayLimit } from "./say-limit.ts";

/** What to know beside the figures of a hang, as a sentence. */
export function sayHangNote(note: HangNote): string {
  if (note.key === "moved-by")
    return `The strap angle gives way: at the one asked for, ${sayLimit(note.limit)}.`;
  if (note.key === "outside-usual") {
    return `As asked for, ${sayLimit(note.limit)} by the usual limits: how far off is still fine is not told.`;
  }
  return BORDERS[note.key];
}

const BORDERS: Readonly<Record<BorderNote, string>> = {
  "nearly-straight": "The cloth hangs nearly straight: its own stretch decides, which nobody has measured.",
  "short-cloth": "A short hammock for this sleeper: expect squeezed shoulders and a ridge under the calves.",
  "short-straps":
    "The straps are very short: a few centimetres of span change the angle by many degrees. Measure the span.",
  "ridgeline-barely-taut": "The ridgeline is barely taut and may hang slack.",
  "stretchy-straps": "The straps stretch so far that their stiffness as told no longer holds good.",
  "steep-ground": "Steep ground: heights in the middle lean on a straight slope between the trees.",
  "body-unlike-table":
    "The body is shorter or taller than those that were measured: where its weight lies is a guess.",
};
