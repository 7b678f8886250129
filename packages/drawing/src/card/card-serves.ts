import { handMarks, handRanges } from "@nightspan/core";
import type { BerthFacts } from "../berth/berth-facts.ts";
import { markHeightM } from "../berth/berth-words.ts";
import { quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";

/** The small line beneath an action, where there is one. */
interface Note {
  readonly note?: TextItem;
}

/** Between which heights the head strap still serves, the rest as marked. */
export function headServes({ berth }: BerthFacts): Note {
  const range = handRanges(berth).headHeightM;
  if (range === undefined) return {};
  const [low, high] = range;
  return { note: word("card.serves", { low: quantity("length", low, 2, "number"), high: length(high) }) };
}

/** How much higher or lower the foot strap still serves, sighted level across from the head strap. */
export function footServes({ berth }: BerthFacts): Note {
  const range = handRanges(berth).footOverHeadM;
  if (range === undefined) return {};
  const [low, high] = range;
  if (low > 0) return { note: word("card.serves-higher", shortLengths(low, high)) };
  if (high < 0) return { note: word("card.serves-lower", shortLengths(-high, -low)) };
  const one = (overM: number): TextItem =>
    Math.abs(overM) < 0.005
      ? word("level-same")
      : word(overM > 0 ? "level-higher" : "level-lower", {
          by: quantity("short-length", Math.abs(overM), 0),
        });
  return { note: word("card.serves", { low: one(low), high: one(high) }) };
}

/** Between which lengths bark to hammock still serves; once where both sides say the same. */
export function strapServes({ berth }: BerthFacts): Note {
  const { headStrapM: one, footStrapM: two } = handRanges(berth);
  if (one === undefined || two === undefined) return {};
  const { headStrapM, footStrapM } = handMarks(berth);
  const alike = markHeightM(headStrapM) === markHeightM(footStrapM);
  const both = [Math.max(one[0], two[0]), Math.min(one[1], two[1])] as const;
  if (alike) return { note: word("card.serves", shortLengths(...both)) };
  const other = shortLengths(...two);
  return { note: word("card.serves-two", { ...shortLengths(...one), low2: other.low, high2: other.high }) };
}

function shortLengths(low: number, high: number) {
  return { low: quantity("short-length", low, 0, "number"), high: quantity("short-length", high, 0) };
}

function length(metres: number): TextItem {
  return quantity("length", metres, 2);
}
