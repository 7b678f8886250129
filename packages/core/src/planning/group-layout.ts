import { costOf, isNear, spreadUnits, squareBetween, type Hub } from "./group-around-hubs.ts";
import type { GroupSearchInput, GroupSeat } from "./group-types.ts";

/** A whole layout of groups. */
export interface GroupLayout {
  readonly hubs: readonly Hub[];
  readonly seats: readonly GroupSeat[];
  readonly worth: number;
}

/** What a layout costs, people out of reach and the way to their hubs included. */
export function layoutWorth(
  input: GroupSearchInput,
  hubs: readonly Hub[],
  seats: readonly GroupSeat[],
  farUnits: number,
): number {
  const hubOf = new Map(hubs.map((hub) => [hub.group, hub.place]));
  return seats.reduce((sum, { kind, place }) => {
    const group = input.kinds[kind]?.group ?? -1;
    const hub = hubOf.get(group);
    const far = hub !== undefined && !isNear(input, group, place, hub);
    return sum + costOf(input, kind, place) + spreadUnits(input, place, hub) + (far ? farUnits : 0);
  }, 0);
}

/** A group and those whose hubs are nearest to its own. */
export function nearestGroups(
  { spots }: GroupSearchInput,
  hubs: readonly Hub[],
  hub: Hub,
  count: number,
): number[] {
  const away = ({ place }: Hub): number => {
    const squared = squareBetween(spots[place], spots[hub.place]);
    return Number.isNaN(squared) ? Infinity : squared;
  };
  const others = hubs.filter(({ group }) => group !== hub.group);
  const sorted = others.map((one) => ({ one, squared: away(one) })).sort(byDistance);
  return [hub.group, ...sorted.slice(0, count).map(({ one }) => one.group)];
}

function byDistance(
  a: { readonly one: Hub; readonly squared: number },
  b: { readonly one: Hub; readonly squared: number },
): number {
  return a.squared < b.squared ? -1 : a.squared > b.squared ? 1 : a.one.group - b.one.group;
}

/** Kinds whose berth may be the hub of a group. */
export function hubKinds({ kinds }: GroupSearchInput, group: number): number[] {
  const own = [...kinds.keys()].filter((kind) => {
    const { group: of, people = 0 } = kinds[kind] ?? {};
    return of === group && people > 0;
  });
  const leading = own.filter((kind) => kinds[kind]?.leads);
  return leading.length > 0 ? leading : own;
}
