import type { Camp } from "../../plan/camp.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { ArriveBy, SetUp } from "../../plan/night-types.ts";
import { isoInstant } from "../../shelter/civil-time.ts";

/** Time and hands of a camp, the table of defaults where it is silent; `silent` names what was taken from there. */
export function setUpOf({ setUp = {}, sleepers }: Camp): {
  readonly setUp: SetUp;
  readonly silent: readonly string[];
} {
  const leaders = Math.max(1, sleepers.filter(({ leads }) => leads).length);
  const minutes = (key: "per_berth_min" | "tree_check_min" | "margin_min") =>
    60 * DEFAULTS[`set_up.${key}`].value;
  const silent = [
    ...(setUp.perBerthS === undefined ? ["set_up.per_berth_min"] : []),
    ...(setUp.helpers === undefined ? ["set_up.helpers"] : []),
    ...(setUp.treeCheckS === undefined ? ["set_up.tree_check_min"] : []),
    ...(setUp.marginS === undefined ? ["set_up.margin_min"] : []),
  ];
  return {
    silent,
    setUp: {
      perBerthS: setUp.perBerthS ?? minutes("per_berth_min"),
      helpers: Math.max(1, setUp.helpers ?? leaders),
      treeCheckS: setUp.treeCheckS ?? minutes("tree_check_min"),
      marginS: setUp.marginS ?? minutes("margin_min"),
    },
  };
}

/**
 * Latest arrival: dark less set-up of all berths by all helpers, the look at the trees, and a margin.
 *
 * Units    darkAt: days since 2000-01-01T12:00Z; seconds
 * Source   common-practice
 */
export function arriveBy(darkAt: number, berths: number, setUp: SetUp): ArriveBy {
  const { perBerthS, helpers, treeCheckS, marginS } = setUp;
  const neededS = (perBerthS * berths) / helpers + treeCheckS + marginS;
  return {
    at: isoInstant(darkAt - neededS / DAY_S),
    darkAt: isoInstant(darkAt),
    perBerthS,
    berths,
    helpers,
    treeCheckS,
    marginS,
  };
}

const DAY_S = 86_400;
