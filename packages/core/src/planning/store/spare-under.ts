import { DEFAULTS } from "../../plan/defaults.ts";
import type { StoreHands } from "./store-hands.ts";

/** Spares and fallback places for so many people: one for every six, or part of six. */
export function sparesWanted(people: number): number {
  return Math.ceil(people / DEFAULTS["warmth.sleepers_per_spare"].value);
}

/** Puts by spare under layers from what was not dealt: the warmest, as far as they go. */
export function putBySpares(hands: StoreHands, people: number): { item: string; count: number }[] {
  let wanted = sparesWanted(people);
  const warmest = hands.available("under").sort((a, b) => warmth(b) - warmth(a));
  return warmest.flatMap((line) => {
    const count = Math.min(wanted, hands.leftOf(line.id));
    if (count <= 0) return [];
    wanted -= count;
    hands.putBy(line.id, count);
    return [{ item: line.id, count }];
  });
}

/** For order alone: a resistance, or what a limit stands for. */
function warmth({
  insulationM2KPerW,
  limitK,
}: {
  readonly insulationM2KPerW?: number;
  readonly limitK?: number;
}): number {
  return insulationM2KPerW ?? (limitK === undefined ? 0 : (300 - limitK) / 40);
}
