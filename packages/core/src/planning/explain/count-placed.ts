import { dealPlaces } from "../berth-search-deal.ts";
import { searchModel } from "../berth-search-model.ts";
import type { BerthSearch, BerthSearchInput } from "../berth-search-types.ts";
import { searchBerths } from "../berth-search.ts";
import type { LinearSolver } from "../linear-solver.ts";
import type { PreparedCamp } from "../prepare-camp.ts";

export interface PlacedCount {
  readonly placed: number;
  /** Proven most that can be placed. */
  readonly bound: number;
}

/**
 * How many people of a camp can have a berth at all, whatever it costs and whoever lies near whom.
 *
 * The search runs on what nobody has refused yet; each hang it chooses is then asked for. Where one is refused, the
 * places are dealt anew among all classes; where that fails too, the search runs again without what was refused.
 *
 * Source   layout-search (handbook/planning.md)
 */
export function countPlaced(prepared: PreparedCamp, solver?: LinearSolver): PlacedCount {
  const { desk, pinned } = prepared;
  const allowed = prepared.allowed.map((row) => row.slice());
  for (;;) {
    const search = searchBerths(countInput(prepared, allowed), solver === undefined ? {} : { solver });
    const wrong = search.chosen.filter(({ classIndex, place }) => !desk.serves(classIndex, place));
    if (wrong.length === 0 || canBeDealt(prepared, search)) {
      return { placed: pinned.length + search.placed, bound: pinned.length + search.bound };
    }
    for (const classIndex of new Set(wrong.map((one) => one.classIndex))) {
      allowed[classIndex]?.forEach((flag, place, row) => {
        row[place] = flag === 1 && desk.serves(classIndex, place) ? 1 : 0;
      });
    }
  }
}

/** The search without costs. */
function countInput(
  { camp, ground, classes, seeking, capacities }: PreparedCamp,
  allowed: readonly Uint8Array[],
): BerthSearchInput {
  return {
    trees: ground.anchors.length,
    places: ground.places,
    capacity: camp.rules.hammocksPerTree.value,
    capacities,
    conflicts: ground.conflicts,
    classes: classes.slice(0, seeking).map(({ members }, index) => ({
      people: members.length,
      costUnits: Float64Array.from(allowed[index] ?? [], (flag) => flag - 1),
    })),
  };
}

/** Whether the places found can be given to classes whose hangs all serve there. */
function canBeDealt({ ground, classes, seeking, desk }: PreparedCamp, { chosen }: BerthSearch): boolean {
  const places = chosen.map(({ place }) => place);
  const model = searchModel({
    trees: ground.anchors.length,
    places: places.flatMap((place) => ground.places[place] ?? []),
    capacity: places.length,
    conflicts: [],
    classes: classes.slice(0, seeking).map(({ members }, index) => ({
      people: members.length,
      costUnits: Float64Array.from(places, (place) => (desk.serves(index, place) ? 0 : -1)),
    })),
  });
  return dealPlaces(model, [...places.keys()]) !== undefined;
}
