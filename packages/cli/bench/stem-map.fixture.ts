import type { PlacesInput, Tree } from "@nightspan/core";

export interface StemMap {
  readonly stems: number;
  readonly perHectare: number;
  readonly spanMinM: number;
  readonly spanMaxM: number;
  readonly trunkMinM: number;
  /** Stems stand at least this far apart [m]. */
  readonly apartM: number;
  /** In rows, as planted, or anywhere. */
  readonly planted: boolean;
  readonly dbhM: readonly [number, number];
  readonly seed: number;
}

/** An open wood as woods are: trunks of all sizes anywhere. */
export const OPEN_WOOD: Omit<StemMap, "stems"> = {
  perHectare: 800,
  spanMinM: 3,
  spanMaxM: 5,
  trunkMinM: 0.2,
  apartM: 0.8,
  planted: false,
  dbhM: [0.08, 0.38],
  seed: 7,
};

/** A square wood of stems at seeded places, all looked at and healthy. */
export function stemMap(map: StemMap): PlacesInput {
  const draw = uniform(map.seed);
  const sideM = Math.sqrt((map.stems / map.perHectare) * 10_000);
  const spots = map.planted ? inRows(map, sideM, draw) : anywhere(map, sideM, draw);
  const [least, most] = map.dbhM;
  const trees = spots.map(([xM, yM], index): Tree => {
    const id = `T${String(index).padStart(6, "0")}`;
    return { id, tag: id, xM, yM, dbhM: least + draw() * (most - least), condition: "healthy", use: true };
  });
  return {
    trees,
    obstacles: [],
    spanMinM: map.spanMinM,
    spanMaxM: map.spanMaxM,
    trunkMinM: map.trunkMinM,
    halfWidthM: 1.2,
    deadTreeHeights: 0,
    doubtfulTreeHeights: 0,
  };
}

type Spot = readonly [number, number];

function inRows({ stems }: StemMap, sideM: number, draw: () => number): Spot[] {
  const rows = Math.ceil(Math.sqrt(stems));
  const stepM = sideM / rows;
  return Array.from({ length: stems }, (_, index): Spot => {
    const jitter = (): number => (draw() - 0.5) * stepM * 0.8;
    return [(index % rows) * stepM + jitter(), Math.floor(index / rows) * stepM + jitter()];
  });
}

function anywhere({ stems, apartM }: StemMap, sideM: number, draw: () => number): Spot[] {
  const cells = new Map<string, Spot[]>();
  const spots: Spot[] = [];
  while (spots.length < stems) {
    const spot: Spot = [draw() * sideM, draw() * sideM];
    const column = Math.floor(spot[0] / apartM);
    const row = Math.floor(spot[1] / apartM);
    const near = NEIGHBOURS.flatMap(([x, y]) => cells.get(`${column + x} ${row + y}`) ?? []);
    if (near.some(([x, y]) => (x - spot[0]) ** 2 + (y - spot[1]) ** 2 < apartM * apartM)) continue;
    cells.set(`${column} ${row}`, [...(cells.get(`${column} ${row}`) ?? []), spot]);
    spots.push(spot);
  }
  return spots;
}

const NEIGHBOURS = [-1, 0, 1].flatMap((x) => [-1, 0, 1].map((y) => [x, y] as const));

/** Numbers from 0 to 1: xorshift on 32 bits. */
function uniform(seed: number): () => number {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4_294_967_296;
  };
}
