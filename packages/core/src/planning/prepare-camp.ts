import type { Camp, Ground } from "../plan/camp.ts";
import { allowedPlaces } from "./allowed-places.ts";
import { campPlaces } from "./camp-places.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { dealKit, type KitDeal } from "./deal-kit.ts";
import { fitClasses, type FitClass } from "./fit-classes.ts";
import { HangDesk } from "./hang-desk.ts";

/** A camp made ready for the search: kit dealt, places found, hangs that are refused left out. */
export interface PreparedCamp {
  readonly camp: Camp;
  readonly deal: KitDeal;
  readonly ground: CampPlaces;
  readonly classes: readonly FitClass[];
  readonly desk: HangDesk;
  /** classes × places: whether the class may hang there as far as is known. */
  readonly allowed: readonly Uint8Array[];
  /** Places at which the hang of every class is refused. */
  readonly refusedEverywhere: number;
}

export function prepareCamp(camp: Camp): PreparedCamp {
  const deal = dealKit(camp.sleepers, camp.kit, camp.rules.strapWidthMinM.value);
  const ground = campPlaces(camp.ground ?? NO_GROUND, camp.rules);
  const classes = fitClasses(deal.dealt, camp);
  const desk = new HangDesk(ground.places, classes);
  return { camp, deal, ground, classes, desk, ...allowedPlaces(ground.places, classes, desk) };
}

export const NO_GROUND: Ground = { trees: [], pairs: [], obstacles: [], source: "taped", positionErrorM: 0 };
