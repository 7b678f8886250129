import type { Camp, Plan } from "@nightspan/core";
import { name, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";

/** Camp and day, under the title of a paper. */
export function factsText(camp: Camp): TextItem {
  if (camp.date === undefined) return name(camp.name);
  return word("sheet.facts", { camp: name(camp.name), day: { day: camp.date, style: "with-weekday" } });
}

/** Names of people by their ids. */
export function namesById({ sleepers }: Camp): ReadonlyMap<string, string> {
  return new Map(sleepers.map((sleeper) => [sleeper.id, sleeper.name]));
}

/** Tags of trees by their ids; a tree without one goes by its id. */
export function tagsById({ ground }: Camp): ReadonlyMap<string, string> {
  return new Map((ground?.trees ?? []).map(({ id, tag }) => [id, tag]));
}

/** Numbers of berths by their sleepers. */
export function berthsBySleeper({ berths }: Plan): ReadonlyMap<string, string> {
  return new Map(berths.map(({ id, sleeper }) => [sleeper, id]));
}
