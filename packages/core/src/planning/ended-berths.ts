import { readingOrder } from "./berth-numbers.ts";
import type { CampPlace, CampPlaces } from "./camp-places-types.ts";
import type { ChosenBerths } from "./choose-berths.ts";
import type { DealtKit } from "./dealt-kit.ts";
import { hazardsOf } from "./findings/surroundings.ts";
import { mostMomentNm } from "./findings/trunk.ts";
import { headIsSecond } from "./hang-request.ts";
import { NO_GROUND } from "./no-ground.ts";
import { planBerth, type EndedBerth } from "./plan-berth.ts";
import type { PreparedCamp } from "./prepare-camp.ts";
import { campTarps, withRidgePulls } from "./shelter/camp-tarps.ts";
import { isSpare, isSpareId } from "./spare-sleepers.ts";
import type { SpanExtras } from "./span-window.ts";
import { trunkPulls } from "./trunk-pulls.ts";

/** What is needed of a camp to work its berths out. */
export type HungCamp = Pick<PreparedCamp, "camp" | "ground" | "classes" | "desk"> & {
  /** Tarps are left out. */
  readonly isInterim?: boolean;
};

/** The berths of a layout in the order of the map, those of people and the spare ones numbered by themselves. */
export function endedBerths(
  { camp, ground, classes, desk, isInterim = false }: HungCamp,
  seats: ChosenBerths["seats"],
): EndedBerth[] {
  let [people, spares] = [0, 0];
  const places = seats.flatMap(({ place }) => ground.places[place] ?? []);
  const hazards = hazardsOf(camp.ground ?? NO_GROUND);
  const hung = readingOrder(places, camp.ground ?? NO_GROUND).flatMap((index) => {
    const seat = seats[index];
    const place = places[index];
    const fit = classes[seat?.classIndex ?? -1];
    if (seat === undefined || place === undefined || fit === undefined) return [];
    const outcome = desk.hangOf(seat.classIndex, seat.place);
    if (!outcome.ok) return [];
    const extras = spanExtras(seat.kit, place, ground);
    const window = desk.spanWindowOf(seat.classIndex, seat.place, camp.rules, extras);
    return [
      {
        id: isSpare(seat) ? `S${++spares}` : String(++people),
        place,
        kit: seat.kit,
        limits: fit.limits,
        hang: outcome.value,
        request: desk.requestOf(seat.classIndex, seat.place),
        ...(window === undefined ? {} : { spanWindow: window }),
      },
    ];
  });
  const slept = isInterim ? [] : hung.filter(({ kit }) => !isSpareId(kit.sleeper.id));
  const tarps = campTarps(camp, ground, slept);
  const pulls = withRidgePulls(trunkPulls(hung), slept, tarps);
  const common = { camp, hazards, anchors: ground.anchors, pulls };
  return hung.map((berth) => {
    const shelter = tarps.get(berth.id);
    return planBerth({ ...berth, ...common, ...(shelter === undefined ? {} : { shelter }) });
  });
}

/** What besides the hang may end a berth's window of spans: room for the tarp, bending of a trunk that is known. */
function spanExtras({ tarp }: DealtKit, place: CampPlace, { anchors }: CampPlaces): SpanExtras {
  const ends = [place.first, place.second].map((anchor, end) => {
    const tree = anchors[anchor]?.tree;
    const isMeasured = tree !== undefined || !place.dbhAssumed;
    return isMeasured ? mostMomentNm(tree, place.dbhM[end] ?? 0) : Infinity;
  });
  const [head, foot] = headIsSecond(place) ? ends.toReversed() : ends;
  return {
    ...(tarp === undefined ? {} : { tarpRidgeM: tarp.ridgeM }),
    bendMaxNM: { head: head ?? Infinity, foot: foot ?? Infinity },
  };
}
