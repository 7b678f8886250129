import type { CampPlace } from "./camp-places-types.ts";
import type { FitClass } from "./fit-classes.ts";
import type { HangDesk } from "./hang-desk.ts";

export interface AllowedPlaces {
  /** classes × places: 0 where the hang is refused, 1 where it is not or nobody has looked yet. */
  readonly allowed: readonly Uint8Array[];
  /** Places at which the hang of every class is refused. */
  readonly refusedEverywhere: number;
}

/**
 * Which classes may hang at which places, as far as is worth knowing before the search.
 *
 * Few enough questions are all asked. Of many, each place is asked for until one class serves, so that a place that
 * serves nobody is always found; the rest is asked when the search has chosen.
 */
export function allowedPlaces(
  places: readonly CampPlace[],
  classes: readonly FitClass[],
  desk: HangDesk,
  mostQuestions = MOST_QUESTIONS,
): AllowedPlaces {
  const allowed = classes.map(() => new Uint8Array(places.length).fill(1));
  const askAll = classes.length * places.length <= mostQuestions;
  let refusedEverywhere = 0;
  for (let place = 0; place < places.length; place++) {
    let serving = 0;
    for (const [classIndex, row] of allowed.entries()) {
      if (serving > 0 && !askAll) break;
      const serves = desk.serves(classIndex, place);
      row[place] = serves ? 1 : 0;
      serving += serves ? 1 : 0;
    }
    if (serving === 0 && classes.length > 0) refusedEverywhere += 1;
  }
  return { allowed, refusedEverywhere };
}

/** Class × place questions that are all asked beforehand; about a fifth of a second. */
const MOST_QUESTIONS = 20_000;
