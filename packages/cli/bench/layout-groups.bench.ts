import { berthPlaces, searchBerths, searchGroups, type GroupSearchInput } from "@nightspan/core";
import { highsSolver } from "@nightspan/edge";
import loadHighs, { type Highs } from "highs";
import { OPEN_WOOD, stemMap } from "./stem-map.fixture.ts";

/**
 * Groups of seven or eight with a leader each, everybody within 25 m of the leader's berth, or 12 and 15 m, in several woods.
 *
 * The gap is to the proven bound: the best layout where nobody minds groups, or more where the search could raise it. Time
 * is of both searches, without finding places; loading the solver is left out.
 */
const SEEDS = [7, 14, 21, 28, 35, 42];

const CASES = [
  {
    name: "800 stems, 60 people, 8 groups",
    withinM: 25,
    stems: 800,
    people: 60,
    groups: 8,
    wantedMs: 2000,
    seeds: SEEDS,
  },
  {
    name: "3,000 stems, 250 people, 32 groups",
    withinM: 25,
    stems: 3000,
    people: 250,
    groups: 32,
    wantedMs: 5000,
    seeds: SEEDS,
  },
  {
    name: "10,000 stems, 1,000 people, 125 groups",
    withinM: 25,
    stems: 10_000,
    people: 1000,
    groups: 125,
    wantedMs: 20_000,
    seeds: [7, 14],
  },
  ...[12, 15].flatMap((withinM) => [
    {
      name: "small circles, 800 stems, 60 people, 8 groups",
      withinM,
      stems: 800,
      people: 60,
      groups: 8,
      wantedMs: 5000,
      seeds: [7, 14],
    },
    {
      name: "small circles, 3,000 stems, 250 people, 32 groups",
      withinM,
      stems: 3000,
      people: 250,
      groups: 32,
      wantedMs: 20_000,
      seeds: [7, 14],
    },
  ]),
];

interface Row {
  readonly seed: number;
  readonly ms: number;
  readonly placed: number;
  readonly outside: number;
  readonly gap: number;
  readonly proven: boolean;
  readonly method: string;
}

function measure(
  highs: Highs,
  { stems, people, groups, withinM }: (typeof CASES)[number],
  seed: number,
): Row {
  const ground = stemMap({ ...OPEN_WOOD, stems, seed });
  const { places, conflicts } = berthPlaces(ground);
  const costUnits = Float64Array.from(places, ({ spanM }) => Math.round(1e4 * Math.abs(spanM - 4)));
  const search = {
    trees: ground.trees.length,
    places,
    capacity: 2,
    conflicts,
    classes: [{ people, costUnits }],
  };
  const tools = { solver: highsSolver(highs) };
  const start = performance.now();
  const base = searchBerths(search, tools);
  const found = searchGroups(
    {
      search,
      base,
      kinds: kindsOf(base.placed, groups),
      groups: radii(groups, withinM),
      spots: spotsOf(ground, places),
    },
    tools,
  );
  const ms = performance.now() - start;
  const { placed, proven, method, costUnits: cost, lowerBoundUnits } = found.search;
  return { seed, ms, placed, outside: found.outside, gap: (cost - lowerBoundUnits) / cost, proven, method };
}

/** A leader and six or seven others a group. */
function kindsOf(people: number, groups: number): GroupSearchInput["kinds"] {
  return Array.from({ length: groups }, (_, group) => [
    { classIndex: 0, group, people: 1, leads: true },
    { classIndex: 0, group, people: Math.floor((people - group - 1) / groups), leads: false },
  ]).flat();
}

function radii(groups: number, withinM: number): GroupSearchInput["groups"] {
  return Array.from({ length: groups }, () => ({ withinM }));
}

function spotsOf(
  { trees }: ReturnType<typeof stemMap>,
  places: ReturnType<typeof berthPlaces>["places"],
): GroupSearchInput["spots"] {
  return places.map(({ first, second }) => {
    const [a, b] = [trees[first], trees[second]];
    return a === undefined || b === undefined ? undefined : [(a.xM + b.xM) / 2, (a.yM + b.yM) / 2];
  });
}

function show({ seed, ms, placed, outside, gap, proven, method }: Row): void {
  const proof = proven ? "proven" : `gap ${(100 * gap).toFixed(2)} %`;
  console.log(
    `  wood ${seed}: ${ms.toFixed(0)} ms, ${placed} placed, ${outside} outside, ${proof}, ${method}`,
  );
}

const highs = await loadHighs();
for (const one of CASES) {
  console.log(
    `${one.name}, within ${one.withinM} m (wanted: at most ${one.wantedMs} ms, nobody outside, gap 2 %)`,
  );
  const rows = one.seeds.map((seed) => measure(highs, one, seed));
  rows.forEach(show);
  const worst = rows.reduce((most, { ms }) => Math.max(most, ms), 0);
  const gap = rows.reduce((most, row) => Math.max(most, row.gap), 0);
  console.log(`  worst: ${worst.toFixed(0)} ms, gap ${(100 * gap).toFixed(2)} %`);
}
