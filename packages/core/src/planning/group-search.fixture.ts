import type { Draw } from "../geometry/draw.fixture.ts";
import { searchBerths } from "./berth-search.ts";
import { randomSearch } from "./berth-search.fixture.ts";
import type { GroupSearchInput, SearchKind } from "./group-types.ts";

/** A small search over random pairs at random spots, with a few groups of random size and radius. */
export function randomGroups(draw: Draw): GroupSearchInput {
  const count = draw(1, 3);
  const kinds: SearchKind[] = [];
  const classes = draw(1, 2);
  for (let group = -1; group < count; group++) {
    for (let classIndex = 0; classIndex < classes; classIndex++) {
      kinds.push({ classIndex, group, people: draw(0, 2), leads: false });
      if (group >= 0 && draw(0, 1) === 1) kinds.push({ classIndex, group, people: 1, leads: true });
    }
  }
  const drawn = randomSearch(draw, {
    places: draw(0, 7),
    trees: 7,
    classes,
    capacity: draw(1, 2),
    conflictsInTen: draw(0, 3),
  });
  const search = {
    ...drawn,
    classes: drawn.classes.map((one, index) => ({
      ...one,
      people: kinds.reduce((sum, kind) => sum + (kind.classIndex === index ? kind.people : 0), 0),
    })),
  };
  const base = searchBerths(search);
  return {
    search,
    base,
    kinds: fewerOf(kinds, base.chosen),
    groups: Array.from({ length: count }, () => ({ withinM: draw(2, 12) })),
    spots: search.places.map(() => (draw(1, 10) === 1 ? undefined : [draw(0, 20), draw(0, 20)])),
  };
}

/** As many of each class as were placed, those who lead first. */
function fewerOf(kinds: readonly SearchKind[], chosen: GroupSearchInput["base"]["chosen"]): SearchKind[] {
  const left = new Map<number, number>();
  chosen.forEach(({ classIndex }) => left.set(classIndex, (left.get(classIndex) ?? 0) + 1));
  const order = [...kinds].sort((a, b) => Number(b.leads) - Number(a.leads));
  return order.map((kind) => {
    const people = Math.min(kind.people, left.get(kind.classIndex) ?? 0);
    left.set(kind.classIndex, (left.get(kind.classIndex) ?? 0) - people);
    return { ...kind, people };
  });
}

/** The least Σ cost + far · outside over every way to give everybody a berth and every hub. */
export function bestGroupsByBruteForce(input: GroupSearchInput, farUnits: number): number {
  const { search, kinds } = input;
  const people = kinds.flatMap(({ people: count }, kind) => Array.from({ length: count }, () => kind));
  const loads = new Array<number>(search.trees).fill(0);
  const seats: { readonly place: number; readonly kind: number }[] = [];
  let best = Infinity;
  const visit = (at: number, cost: number): void => {
    const kind = people[at];
    if (kind === undefined) {
      best = Math.min(best, cost + farUnits * leastOutside(input, seats));
      return;
    }
    const before = at > 0 && people[at - 1] === kind ? (seats[at - 1]?.place ?? -1) : -1;
    for (const [place, { first, second }] of search.places.entries()) {
      const units = search.classes[kinds[kind]?.classIndex ?? -1]?.costUnits[place] ?? -1;
      if (units < 0 || place <= before || seats.some((seat) => seat.place === place)) continue;
      if (Math.max(loads[first] ?? 0, loads[second] ?? 0) >= search.capacity) continue;
      if (
        search.conflicts.some((pair) => pair.includes(place) && seats.some((s) => pair.includes(s.place)))
      ) {
        continue;
      }
      loads[first] = (loads[first] ?? 0) + 1;
      loads[second] = (loads[second] ?? 0) + 1;
      seats.push({ place, kind });
      visit(at + 1, cost + units);
      seats.pop();
      loads[first] = (loads[first] ?? 0) - 1;
      loads[second] = (loads[second] ?? 0) - 1;
    }
  };
  visit(0, 0);
  return best;
}

/** With the best hub of each group, how many of it lie beyond its radius; plain arithmetic of its own. */
export function leastOutside(
  { kinds, groups, spots }: GroupSearchInput,
  seats: readonly { readonly place: number; readonly kind: number }[],
): number {
  return groups.reduce((sum, { withinM }, group) => {
    const own = seats.filter(({ kind }) => kinds[kind]?.group === group);
    const leads = kinds.some((kind) => kind.group === group && kind.leads && kind.people > 0);
    const hubs = own.filter(({ kind }) => !leads || kinds[kind]?.leads);
    const counts = hubs.map(
      (hub) =>
        own.filter(({ place }) => {
          const [a, b] = [spots[place], spots[hub.place]];
          return a !== undefined && b !== undefined && Math.hypot(a[0] - b[0], a[1] - b[1]) > withinM + 1e-9;
        }).length,
    );
    return sum + (own.length === 0 ? 0 : Math.min(...counts));
  }, 0);
}
