import type { Camp, Plan, YouthWarmth } from "@nightspan/core";
import { listed } from "../card/card-words.ts";
import { name, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { clockText } from "../words/clock.ts";

/**
 * Children for whom a layer is not enough tonight, to be told before all else: what is lacking, and who looks in by night. Those
 * of whom the same is said stand in one sentence. Nobody's age is told.
 */
export function youthLacksTexts({ berths }: Plan, camp: Camp): TextItem[] {
  const alike = new Map<string, Lack & { readonly names: TextItem[] }>();
  for (const { sleeper, warmth } of berths) {
    const lack = warmth?.by === "youth-rule" ? lackOf(warmth, camp) : undefined;
    if (lack === undefined) continue;
    const said = JSON.stringify(lack);
    const told = alike.get(said) ?? { ...lack, names: [] };
    told.names.push(name(nameOf(camp, sleeper)));
    alike.set(said, told);
  }
  return [...alike.values()].map(({ key, layers, look, names }) =>
    word(key, { names: listed(names), layers, look }),
  );
}

interface Lack {
  readonly key: "warmth.youth-lacks" | "warmth.youth-borderline";
  readonly layers: TextItem;
  readonly look: TextItem;
}

function lackOf(warmth: YouthWarmth, camp: Camp): Lack | undefined {
  const short = (["under", "over"] as const).filter((half) => warmth[half].enough !== "enough");
  if (short.length === 0) return undefined;
  const isCold = short.some((half) => warmth[half].enough === "not-enough");
  return {
    key: isCold ? "warmth.youth-lacks" : "warmth.youth-borderline",
    layers: listed(short.map((half) => word(`packed.${half}`))),
    look: lookIn(warmth, camp),
  };
}

function lookIn({ checkAt, checkedBy }: YouthWarmth, camp: Camp): TextItem {
  const at = clockText(checkAt, camp.place);
  if (checkedBy === undefined) return word("card.look-in-nobody", { at });
  return word("card.look-in", { at, name: name(nameOf(camp, checkedBy)) });
}

function nameOf({ sleepers }: Camp, sleeper: string): string {
  return sleepers.find(({ id }) => id === sleeper)?.name ?? sleeper;
}
