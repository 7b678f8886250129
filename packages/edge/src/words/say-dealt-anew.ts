import type { Plan } from "@nightspan/core";
import type { Names } from "./names.ts";

/** Who has other kit than at first, so that more people have a berth; nothing where the first dealing was kept. */
export function sayDealtAnew(
  { dealtAnew, placed }: Pick<Plan, "dealtAnew" | "placed">,
  names: Pick<Names, "sleeper">,
): readonly string[] {
  if (dealtAnew === undefined) return [];
  const { placedBefore, changes } = dealtAnew;
  const more = placed - placedBefore;
  const first = `Kit was dealt anew for the places there are: ${more} more ${more === 1 ? "has" : "have"} a berth.`;
  const told = changes.slice(0, MOST_TOLD).map(({ sleeper, from, to }) => {
    const instead = from === undefined ? "" : ` instead of ${from}`;
    return `${names.sleeper(sleeper)} has ${to}${instead}.`;
  });
  const left = changes.length - told.length;
  return [first, ...told, ...(left > 0 ? [`And ${left} more changes.`] : [])];
}

/** No more than a person reads. */
const MOST_TOLD = 12;
