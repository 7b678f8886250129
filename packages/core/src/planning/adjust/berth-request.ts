import type { Camp, Sleeper } from "../../plan/camp.ts";
import type { Hammock, Suspension } from "../../plan/kit.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import type { HangInput } from "../../statics/hang-types.ts";
import type { CampPlace, CampPlaces } from "../camp-places-types.ts";
import { campPlaces } from "../camp-places.ts";
import { hangKit, hangLimits, hangPair } from "../hang-request.ts";
import { ASSUMED_HAMMOCK, ASSUMED_SUSPENSION } from "../assumed-kit.ts";

/** What the hang of a planned berth was asked for; nothing where camp and berth do not belong together. */
export function findBerthRequest(camp: Camp, berth: PlannedBerth): HangInput | undefined {
  const sleeper = camp.sleepers.find(({ id }) => id === berth.sleeper);
  const place = camp.ground === undefined ? undefined : placeOf(campPlaces(camp.ground, camp.rules), berth);
  const kit = sleeper === undefined ? undefined : kitOf(camp, berth, sleeper);
  if (sleeper === undefined || place === undefined || kit === undefined) return undefined;
  const { spanErrorM } = place;
  return { ...hangKit(kit, hangLimits(camp, sleeper.statureM)), ...hangPair(place), spanErrorM };
}

function placeOf(
  { anchors, places }: CampPlaces,
  { headTree, footTree, pair }: PlannedBerth,
): CampPlace | undefined {
  const ends = [headTree, footTree].sort();
  return places.find((place) => {
    const found = [anchors[place.first]?.id, anchors[place.second]?.id].sort();
    return found[0] === ends[0] && found[1] === ends[1] && place.pair === pair;
  });
}

function kitOf({ kit }: Camp, berth: PlannedBerth, sleeper: Sleeper) {
  const isHammock = (item: (typeof kit)[number]): item is Hammock => item.kind === "hammock";
  const isSuspension = (item: (typeof kit)[number]): item is Suspension => item.kind === "suspension";
  const { hammock: hammockId, suspension: suspensionId } = berth.kit;
  const hammock =
    hammockId === undefined ? ASSUMED_HAMMOCK : kit.filter(isHammock).find(({ id }) => id === hammockId);
  const suspension =
    suspensionId === undefined
      ? ASSUMED_SUSPENSION
      : kit.filter(isSuspension).find(({ id }) => id === suspensionId);
  return hammock === undefined || suspension === undefined
    ? undefined
    : { sleeper, hammock, suspension, assumed: [] };
}
