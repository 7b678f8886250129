import type { Camp } from "@nightspan/core";
import type { BerthFacts } from "../berth/berth-facts.ts";
import { name, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { clockText } from "../words/clock.ts";
import { listed, sentences } from "./card-words.ts";

/** What to take, and of under and over apart whether each is enough; no degrees. */
export function warmthAction({ berth }: BerthFacts): TextItem | undefined {
  const { warmth, kit } = berth;
  if (warmth === undefined) return undefined;
  const rest = [kit.hammock, kit.suspension, kit.tarp].filter((id) => id !== undefined).map(name);
  const halves = (["under", "over"] as const).map((half) => {
    const { item, enough } = warmth[half];
    const what = item === undefined ? word("warmth.nothing") : name(item);
    return word(`card.${half}`, { item: what, enough: word(`warmth.${enough}`) });
  });
  return sentences([...(rest.length === 0 ? [] : [word("card.take", { kit: listed(rest) })]), ...halves]);
}

/** Who looks in at night on somebody under 16, and when. */
export function lookInTexts({ berth }: BerthFacts, { place, sleepers }: Camp): TextItem[] {
  const { warmth } = berth;
  if (warmth?.by !== "youth-rule") return [];
  const at = clockText(warmth.checkAt, place);
  const who = sleepers.find(({ id }) => id === warmth.checkedBy);
  if (who === undefined) return [word("card.look-in-nobody", { at })];
  return [word("card.look-in", { at, name: name(who.name) })];
}
