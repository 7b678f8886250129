import type { OkRange } from "@nightspan/core";
import type { BerthFacts } from "../berth/berth-facts.ts";
import { markHeightM } from "../berth/berth-words.ts";
import { quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";

/** The small line beneath an action, where there is one. */
interface Note {
  readonly note?: TextItem;
}

/** Between which heights the head strap still serves, all else as planned. */
export function headServes({ berth }: BerthFacts): Note {
  const range = berth.hang.ok["head.strapHeightM"];
  if (range === undefined) return {};
  const [low, high] = inside(range);
  return { note: word("card.serves", { low: quantity("length", low, 2, "number"), high: length(high) }) };
}

/** How much higher or lower the foot strap still serves, sighted level across from the head strap. */
export function footServes({ berth }: BerthFacts): Note {
  const { hang } = berth;
  const range = hang.ok["foot.strapHeightM"];
  if (range === undefined) return {};
  const levelM = hang.foot.strapHeightM - hang.levelFootOverHeadM;
  const [low, high] = inside({ low: range.low - levelM, high: range.high - levelM });
  if (low > 0) return { note: word("card.serves-higher", shortLengths(low, high)) };
  if (high < 0) return { note: word("card.serves-lower", shortLengths(-high, -low)) };
  const one = (overM: number): TextItem =>
    overM === 0
      ? word("level-same")
      : word(overM > 0 ? "level-higher" : "level-lower", {
          by: quantity("short-length", Math.abs(overM), 0),
        });
  return { note: word("card.serves", { low: one(low), high: one(high) }) };
}

/** Between which lengths bark to hammock still serves; once where both sides say the same. */
export function strapServes({ berth }: BerthFacts): Note {
  const { ok, head, foot } = berth.hang;
  const [first, second] = [ok["head.strapLengthM"], ok["foot.strapLengthM"]];
  if (first === undefined || second === undefined) return {};
  const [one, two] = [inside(first), inside(second)];
  const alike = markHeightM(head.strapLengthM) === markHeightM(foot.strapLengthM);
  const both = [Math.max(one[0], two[0]), Math.min(one[1], two[1])] as const;
  if (alike) return { note: word("card.serves", shortLengths(...both)) };
  const other = shortLengths(...two);
  return { note: word("card.serves-two", { ...shortLengths(...one), low2: other.low, high2: other.high }) };
}

function shortLengths(low: number, high: number) {
  return { low: quantity("short-length", low, 0, "number"), high: quantity("short-length", high, 0) };
}

/** To whole centimetres, never wider than the range itself. */
function inside({ low, high }: Pick<OkRange, "low" | "high">): readonly [number, number] {
  return [Math.ceil(low * 100 - 1e-6) / 100, Math.floor(high * 100 + 1e-6) / 100];
}

function length(metres: number): TextItem {
  return quantity("length", metres, 2);
}
