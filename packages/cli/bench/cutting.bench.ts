import { cutting, type CuttingInput } from "@nightspan/core";
import loadHighs, { type Highs } from "highs";
import { solvePlainly, type PlainRow } from "./plain-highs.fixture.ts";

/**
 * Cutting 300 pieces of 40 lengths from 30 m spools, proven, beside HiGHS on the plain program (how many of each length from
 * each spool, and whether it is begun), in one run. Where HiGHS has no proof within the limit, the limit counts as its time.
 * Ends with code 1 where ours has no proof or is not 5 times faster. Arguments: seconds for HiGHS (20), number of lists (3).
 */
const GATE = 5;
const limitS = Math.max(1, Number(process.argv[2] ?? 20) || 20);
const lists = Math.max(1, Number(process.argv[3] ?? 3) || 3);

const SPOOL_MM = 30_000;

/** 300 pieces of 40 lengths from 2 to 9 m, to whole centimetres. */
function pieceList(seed: number): CuttingInput["pieces"] {
  let state = seed;
  const next = () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  const lengths = new Set<number>();
  while (lengths.size < 40) lengths.add(10 * Math.round(200 + 700 * next()));
  const counts = new Map([...lengths].map((lengthMm) => [lengthMm, 1]));
  const all = [...lengths];
  for (let piece = 40; piece < 300; piece++) {
    const lengthMm = all[Math.floor(next() * all.length)] ?? 0;
    counts.set(lengthMm, (counts.get(lengthMm) ?? 0) + 1);
  }
  return [...counts].map(([lengthMm, count]) => ({ lengthMm, count }));
}

/** Spools that cutting the longest first begins. */
function firstFit(pieces: CuttingInput["pieces"]): number {
  const left: number[] = [];
  for (const { lengthMm, count } of [...pieces].sort((a, b) => b.lengthMm - a.lengthMm)) {
    for (let piece = 0; piece < count; piece++) {
      const spool = left.findIndex((rest) => rest >= lengthMm);
      if (spool === -1) left.push(SPOOL_MM - lengthMm);
      else left[spool] = (left[spool] ?? 0) - lengthMm;
    }
  }
  return left.length;
}

function plainly(highs: Highs, pieces: CuttingInput["pieces"]) {
  const spools = firstFit(pieces);
  const at = (spool: number, piece: number) => spools + spool * pieces.length + piece;
  const columns = spools * (1 + pieces.length);
  const rows: PlainRow[] = pieces.map(({ count }, piece) => ({
    entries: Array.from({ length: spools }, (_, spool) => [at(spool, piece), 1] as const),
    least: count,
    most: Infinity,
  }));
  for (let spool = 0; spool < spools; spool++) {
    const held = pieces.map(({ lengthMm }, piece) => [at(spool, piece), lengthMm] as const);
    rows.push({ entries: [[spool, -SPOOL_MM], ...held], least: -Infinity, most: 0 });
    if (spool > 0)
      rows.push({
        entries: [
          [spool - 1, 1],
          [spool, -1],
        ],
        least: 0,
        most: Infinity,
      });
  }
  const program = {
    cost: Array.from({ length: columns }, (_, column) => (column < spools ? 1 : 0)),
    upper: Array.from({ length: columns }, (_, column) =>
      column < spools ? 1 : (pieces[(column - spools) % pieces.length]?.count ?? 0),
    ),
    whole: Array.from({ length: columns }, () => true),
    rows,
  };
  return solvePlainly(highs, program, limitS);
}

const highs = await loadHighs();
const ratios: number[] = [];
for (let list = 1; list <= lists; list++) {
  const pieces = pieceList(7 * list);
  const input = { stock: [{ lengthMm: SPOOL_MM }], pieces, kerfMm: 0 };
  const start = performance.now();
  const found = cutting(input);
  const seconds = (performance.now() - start) / 1000;
  if (!found.ok) throw new Error(JSON.stringify(found.refusals));
  const { objective, proven } = found.value;
  const plain = plainly(highs, pieces);
  const ratio = proven ? plain.seconds / seconds : 0;
  ratios.push(ratio);
  const claim = plain.isOptimal ? "proven" : "no proof within the limit";
  if (plain.isOptimal && Math.round(plain.objective) !== objective) throw new Error("the two optima differ");
  console.log(
    `list ${list}: ${objective} spools, ${proven ? "proven" : "not proven"}, ${seconds.toFixed(3)} s`,
  );
  console.log(
    `  plain HiGHS: ${plain.seconds.toFixed(1)} s, ${claim}; at least ${ratio.toFixed(1)} times ours`,
  );
}
const least = Math.min(...ratios);
console.log(`least ratio ${least.toFixed(1)}, wanted ${GATE}`);
if (!(least >= GATE)) process.exitCode = 1;
