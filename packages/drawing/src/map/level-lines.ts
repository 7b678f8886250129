import type { XY } from "../scene/scene.ts";

/** Lines of even height through a grid of heights (marching squares), joined end to end; places in cells. */
export function levelLines(grid: readonly (readonly number[])[], step: number): XY[][] {
  const all = grid.flat();
  const first = Math.ceil(Math.min(...all) / step);
  const last = Math.floor(Math.max(...all) / step);
  const lines: XY[][] = [];
  for (let level = first; level <= last; level++) lines.push(...joined(cuts(grid, level * step)));
  return lines.filter((line) => line.length > 3);
}

type Cut = readonly [from: string, to: string];

interface Cuts {
  readonly places: ReadonlyMap<string, XY>;
  readonly cuts: readonly Cut[];
}

/** Where a level cuts the edges of each cell. */
function cuts(grid: readonly (readonly number[])[], level: number): Cuts {
  const places = new Map<string, XY>();
  const found: Cut[] = [];
  const at = (column: number, row: number): number => (grid[row]?.[column] ?? 0) - level;
  const edge = (c1: number, r1: number, c2: number, r2: number): string | undefined => {
    const [a, b] = [at(c1, r1), at(c2, r2)];
    if (a < 0 === b < 0) return undefined;
    const share = a / (a - b);
    const key = `${c1},${r1},${c2},${r2}`;
    places.set(key, [c1 + (c2 - c1) * share, r1 + (r2 - r1) * share]);
    return key;
  };
  for (let row = 0; row + 1 < grid.length; row++) {
    for (let column = 0; column + 1 < (grid[0]?.length ?? 0); column++) {
      const ends = [
        edge(column, row, column + 1, row),
        edge(column, row, column, row + 1),
        edge(column, row + 1, column + 1, row + 1),
        edge(column + 1, row, column + 1, row + 1),
      ].filter((key) => key !== undefined);
      const [a, b, c, d] = ends;
      if (a !== undefined && b !== undefined) found.push([a, b]);
      if (c !== undefined && d !== undefined) found.push([c, d]);
    }
  }
  return { places, cuts: found };
}

function joined({ places, cuts }: Cuts): XY[][] {
  const next = new Map<string, string[]>();
  const link = (from: string, to: string): void => {
    const list = next.get(from);
    if (list === undefined) next.set(from, [to]);
    else list.push(to);
  };
  for (const [from, to] of cuts) {
    link(from, to);
    link(to, from);
  }
  const seen = new Set<string>();
  const walk = (start: string): XY[] => {
    const line: XY[] = [];
    for (let key: string | undefined = start; key !== undefined;) {
      seen.add(key);
      const place = places.get(key);
      if (place !== undefined) line.push(place);
      key = next.get(key)?.find((other) => !seen.has(other));
    }
    return line;
  };
  const keys = [...next.keys()];
  const ends = keys.filter((key) => (next.get(key)?.length ?? 0) === 1);
  return [...ends, ...keys].flatMap((key) => (seen.has(key) ? [] : [walk(key)]));
}
