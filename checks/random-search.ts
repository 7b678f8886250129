/** What a search for berths is asked, as far as a test draws it and tries every layout of it. */
export interface DrawnSearch {
  readonly trees: number;
  readonly places: readonly { readonly first: number; readonly second: number }[];
  readonly capacity: number;
  readonly conflicts: readonly (readonly [number, number])[];
  readonly classes: readonly { readonly people: number; readonly costUnits: Float64Array }[];
}

/** What a random search is drawn from: whole numbers in some range, one after the other. */
export type Draw = (least: number, most: number) => number;

/** Numbers that look random and repeat: a linear congruence on 32 bits, its high bits used. */
export function drawFrom(seed: number): Draw {
  let state = seed >>> 0;
  return (least, most) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return least + ((state >>> 8) % (most - least + 1));
  };
}

export interface SearchSize {
  readonly places: number;
  readonly trees: number;
  readonly classes: number;
  readonly capacity: number;
  readonly conflictsInTen: number;
}

/** A search over random pairs of trees with random conflicts, costs and forbidden places. */
export function randomSearch(draw: Draw, size: SearchSize): DrawnSearch {
  const pairs = new Set<string>();
  for (let tries = 0; tries < 200 && pairs.size < size.places; tries++) {
    const a = draw(0, size.trees - 1);
    const b = draw(0, size.trees - 1);
    if (a !== b)
      pairs.add([Math.min(a, b), Math.max(a, b)].map((tree) => String(tree).padStart(3, "0")).join());
  }
  const places = [...pairs].sort().map((pair) => {
    const [first = 0, second = 0] = pair.split(",").map(Number);
    return { first, second };
  });
  const conflicts: [number, number][] = [];
  for (let a = 0; a < places.length; a++) {
    for (let b = a + 1; b < places.length; b++)
      if (draw(1, 10) <= size.conflictsInTen) conflicts.push([a, b]);
  }
  const classes = Array.from({ length: size.classes }, () => ({
    people: draw(0, 4),
    costUnits: Float64Array.from(places, () => (draw(1, 6) === 1 ? -1 : draw(0, 30))),
  }));
  return { trees: size.trees, places, capacity: size.capacity, conflicts, classes };
}

export interface Best {
  readonly placed: number;
  readonly cost: number;
}

/** The best of all layouts by trying every one: each place empty or carrying one of the classes. */
export function bestByBruteForce(input: DrawnSearch): Best {
  const loads = new Array<number>(input.trees).fill(0);
  const left = input.classes.map(({ people }) => people);
  const chosen: number[] = [];
  let best: Best = { placed: 0, cost: 0 };
  const visit = (place: number, placed: number, cost: number): void => {
    const pair = input.places[place];
    if (pair === undefined) {
      if (placed > best.placed || (placed === best.placed && cost < best.cost)) best = { placed, cost };
      return;
    }
    visit(place + 1, placed, cost);
    const { first, second } = pair;
    if (Math.max(loads[first] ?? 0, loads[second] ?? 0) >= input.capacity) return;
    if (input.conflicts.some(([a, b]) => b === place && chosen.includes(a))) return;
    for (const [index, { costUnits }] of input.classes.entries()) {
      const units = costUnits[place] ?? -1;
      if (units < 0 || (left[index] ?? 0) === 0) continue;
      step(loads, first, 1);
      step(loads, second, 1);
      step(left, index, -1);
      chosen.push(place);
      visit(place + 1, placed + 1, cost + units);
      chosen.pop();
      step(left, index, 1);
      step(loads, first, -1);
      step(loads, second, -1);
    }
  };
  visit(0, 0, 0);
  return best;
}

function step(counts: number[], index: number, by: number): void {
  counts[index] = (counts[index] ?? 0) + by;
}

/** All rules that a list of chosen (place, class) breaks, in words; empty where it keeps them. */
export function brokenRules(
  input: DrawnSearch,
  chosen: readonly { readonly place: number; readonly classIndex: number }[],
): string[] {
  const places = chosen.map(({ place }) => place);
  const trees = places.flatMap((place) => [
    input.places[place]?.first ?? -1,
    input.places[place]?.second ?? -1,
  ]);
  return [
    ...(new Set(places).size < places.length ? ["a place twice"] : []),
    ...(trees.some((tree) => trees.filter((other) => other === tree).length > input.capacity)
      ? ["a tree overloaded"]
      : []),
    ...input.conflicts
      .filter(([a, b]) => places.includes(a) && places.includes(b))
      .map(([a, b]) => `${a} with ${b}`),
    ...input.classes.flatMap(({ people }, index) =>
      chosen.filter(({ classIndex }) => classIndex === index).length > people
        ? [`class ${index} overdrawn`]
        : [],
    ),
    ...chosen.flatMap(({ place, classIndex }) =>
      (input.classes[classIndex]?.costUnits[place] ?? -1) < 0 ? [`class ${classIndex} at ${place}`] : [],
    ),
  ];
}

export function costOf(
  input: DrawnSearch,
  chosen: readonly { readonly place: number; readonly classIndex: number }[],
): number {
  return chosen.reduce(
    (sum, { place, classIndex }) => sum + (input.classes[classIndex]?.costUnits[place] ?? NaN),
    0,
  );
}
