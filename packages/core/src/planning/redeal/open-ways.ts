import type { ChosenBerths } from "../choose-berths.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import type { DealtTypes } from "./person-types.ts";
import type { KitWays } from "./kit-ways.ts";

export interface OpenWays {
  /** ways × places: 1 where it may hang as far as is known. */
  readonly open: readonly Uint8Array[];
  /** Whether every way was asked for at every place, so that what is proven of these is proven of all. */
  readonly isAll: boolean;
}

/**
 * Where each way may hang. Of many, only what may help is asked for: whoever has a berth at that berth in whatever kit,
 * whoever has none anywhere, as far as the questions go.
 */
export function openWays(
  prepared: PreparedCamp,
  dealt: DealtTypes,
  { ways, desk }: KitWays,
  { seats }: ChosenBerths,
): OpenWays {
  const places = prepared.unbalanced.places.length;
  const isAll = ways.length * places <= MOST_QUESTIONS;
  const at = new Map(seats.map(({ kit, place }) => [kit.sleeper.id, place]));
  let left = MOST_QUESTIONS - ways.length;
  const open = ways.map(({ type, classIndex }) => {
    const row = new Uint8Array(places);
    const { members = [], place: kept } = dealt.types[type] ?? {};
    const own = members.flatMap(({ id }) => at.get(id) ?? []);
    const isOut = own.length < members.length && (left -= places) >= 0;
    const asked = kept !== undefined ? [kept] : isAll || isOut ? row.keys() : own;
    for (const place of [...asked]) row[place] = desk.serves(classIndex, place) ? 1 : 0;
    return row;
  });
  return { open, isAll };
}

/** About three tenths of a second. */
const MOST_QUESTIONS = 30_000;
