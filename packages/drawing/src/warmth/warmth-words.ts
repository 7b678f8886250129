import type { BerthWarmth, Camp, WarmthHalf } from "@nightspan/core";
import { name, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { clockText } from "../words/clock.ts";

/** "Under foam: borderline". */
export function halfText(warmth: BerthWarmth, half: WarmthHalf): TextItem {
  const { enough, item } = warmth[half];
  const said = { half: word(`warmth.${half}`), enough: word(`warmth.${enough}`) };
  return word("warmth.half-item", {
    ...said,
    item: item === undefined ? word("warmth.nothing") : name(item),
  });
}

/** Both halves, the weaker first; of somebody under 16, who looks in and what is kept spare. */
export function warmthTexts(warmth: BerthWarmth, camp?: Camp): TextItem[] {
  const other = warmth.weaker === "under" ? "over" : "under";
  const halves = [halfText(warmth, warmth.weaker), halfText(warmth, other)];
  if (warmth.by === "balance") return halves;
  const at = clockText(warmth.checkAt, camp?.place);
  const { checkedBy } = warmth;
  const who = camp?.sleepers.find(({ id }) => id === checkedBy)?.name ?? checkedBy;
  const look =
    who === undefined
      ? word("warmth.no-checker", { at })
      : word("warmth.checked-by", { at, name: name(who) });
  const spare = warmth.spare === undefined ? [] : [word("warmth.spare", { item: name(warmth.spare) })];
  return [...halves, look, ...spare];
}
