import {
  berthPlaces,
  searchBerths,
  type BerthSearchInput,
  type LinearProgram,
  type PlacesInput,
} from "@nightspan/core";
import { highsSolver } from "@nightspan/edge";
import loadHighs, { type Highs } from "highs";
import { pairwiseProgram } from "../src/solver/pairwise-program.fixture.ts";
import { OPEN_WOOD, stemMap, type StemMap } from "./stem-map.fixture.ts";

/**
 * The layout search beside the solver's own defaults on pairwise rows, in one run.
 *
 * Both sides get the same places and conflicts, build their own model and go through both stages: how
 * many, then for how little. Loading the solver is left out. Median of N rounds (argument, 5 unless said). Ends with code 1
 * where ours has no proof, the two answers differ or the ratio is below what is wanted.
 */
const rounds = Math.max(1, Number(process.argv[2] ?? 5) || 5);

/** Planted rows, where spans from 2.7 to 6 m and trunks from 15 cm make about 13,000 berths. */
const DENSE: Omit<StemMap, "stems"> = {
  ...OPEN_WOOD,
  perHectare: 1100,
  spanMinM: 2.7,
  spanMaxM: 6,
  trunkMinM: 0.15,
  planted: true,
  dbhM: [0.06, 0.33],
};

const CASES = [
  { name: "800 stems, 60 people", map: { ...OPEN_WOOD, stems: 800 }, people: 60, wanted: 1 },
  { name: "3,000 stems, 250 people", map: { ...OPEN_WOOD, stems: 3000 }, people: 250, wanted: 8 },
  { name: "10,000 stems, 1,000 people", map: { ...OPEN_WOOD, stems: 10_000 }, people: 1000, wanted: 20 },
  { name: "10,000 stems, dense, 2,500 people", map: { ...DENSE, stems: 10_000 }, people: 2500, wanted: 25 },
];

interface Answer {
  readonly placed: number;
  readonly cost: number;
  readonly method: string;
  readonly proven: boolean;
}

function searchOf(input: PlacesInput, people: number): BerthSearchInput {
  const { places, conflicts } = berthPlaces(input);
  const costUnits = Float64Array.from(places, ({ spanM }) => Math.round(1e4 * Math.abs(spanM - 4)));
  return { trees: input.trees.length, places, capacity: 2, conflicts, classes: [{ people, costUnits }] };
}

function ours(highs: Highs, input: BerthSearchInput): Answer {
  const { placed, costUnits, method, proven } = searchBerths(input, { solver: highsSolver(highs) });
  return { placed, cost: costUnits, method, proven };
}

/** Time until the first layout is there to be shown [ms]. */
function firstLayoutMs(highs: Highs, input: BerthSearchInput): number {
  const start = performance.now();
  let firstMs = Infinity;
  searchBerths(input, {
    solver: highsSolver(highs),
    onIncumbent: () => {
      firstMs = Math.min(firstMs, performance.now() - start);
    },
  });
  return firstMs;
}

function defaults(highs: Highs, input: BerthSearchInput): Answer {
  const placed = Math.round(solveWithDefaults(highs, pairwiseProgram(input)));
  const cost = Math.round(solveWithDefaults(highs, pairwiseProgram(input, placed)));
  return { placed, cost, method: "defaults on pairs", proven: false };
}

function solveWithDefaults(highs: Highs, program: LinearProgram): number {
  const { minimize, maximize } = highs.constants.objectiveSense;
  const { rows: numRows, columns: numCols, starts, indices, values } = program;
  const model = highs.createModel({
    numCols,
    numRows,
    sense: program.sense === "least" ? minimize : maximize,
    colCost: program.cost,
    colLower: new Float64Array(numCols),
    colUpper: program.upper,
    rowLower: program.rowLower,
    rowUpper: program.rowUpper,
    matrix: { format: "csr", numRows, numCols, starts, indices, values },
    integrality: new Int32Array(numCols).fill(1),
  });
  try {
    model.options.set("output_flag", false);
    model.run();
    return model.getObjectiveValue();
  } finally {
    model.dispose();
  }
}

function timed<T>(work: () => T): { readonly ms: number; readonly value: T } {
  const start = performance.now();
  const value = work();
  return { ms: performance.now() - start, value };
}

function median(numbers: readonly number[]): number {
  return [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? NaN;
}

interface Row {
  readonly name: string;
  readonly berths: number;
  readonly conflicts: number;
  readonly placesMs: number;
  readonly firstMs: number;
  readonly oursMs: number;
  readonly defaultsMs: number;
  readonly ratio: number;
  readonly wanted: number;
  readonly answer: Answer;
  readonly other: Answer;
}

function measure(highs: Highs, { name, map, people, wanted }: (typeof CASES)[number]): Row {
  const ground = stemMap(map);
  const input = searchOf(ground, people);
  const places = Array.from({ length: rounds }, () => timed(() => berthPlaces(ground)).ms);
  const pairs = Array.from({ length: rounds }, () => ({
    ours: timed(() => ours(highs, input)),
    defaults: timed(() => defaults(highs, input)),
  }));
  const [first] = pairs;
  if (first === undefined) throw new Error("no round was run");
  const oursMs = median(pairs.map((pair) => pair.ours.ms));
  const defaultsMs = median(pairs.map((pair) => pair.defaults.ms));
  return {
    name,
    berths: input.places.length,
    conflicts: input.conflicts.length,
    placesMs: median(places),
    firstMs: median(Array.from({ length: rounds }, () => firstLayoutMs(highs, input))),
    oursMs,
    defaultsMs,
    ratio: defaultsMs / oursMs,
    wanted,
    answer: first.ours.value,
    other: first.defaults.value,
  };
}

function show(row: Row): void {
  const { answer, other } = row;
  const ms = (time: number): string => time.toFixed(time < 10 ? 1 : 0);
  console.log(`${row.name}: ${row.berths} berths, ${row.conflicts} conflicts`);
  console.log(`  places and conflicts   ${ms(row.placesMs)} ms`);
  console.log(`  first layout           ${ms(row.firstMs)} ms after the places (wanted: both within 200 ms)`);
  console.log(
    `  search                 ${ms(row.oursMs)} ms   ${answer.placed} placed, ${answer.cost} units, ${answer.method}${answer.proven ? ", proven" : ", NOT proven"}`,
  );
  console.log(
    `  solver's defaults      ${ms(row.defaultsMs)} ms   ${other.placed} placed, ${other.cost} units`,
  );
  console.log(`  ratio                  ${row.ratio.toFixed(1)} (wanted ${row.wanted})`);
  const isSame = answer.placed === other.placed && answer.cost === other.cost;
  if (!(row.ratio >= row.wanted && answer.proven && isSame)) process.exitCode = 1;
}

const highs = await loadHighs();
console.log(`median of ${rounds}`);
for (const one of CASES) show(measure(highs, one));
