import type { PathStep, XY } from "../scene/scene.ts";

/** Slanted strokes that fill a polygon, `gap` apart. */
export function hatch(ring: readonly XY[], gap: number): PathStep[] {
  const steps: PathStep[] = [];
  const sums = ring.map(([x, y]) => x + y);
  const [least, most] = [Math.min(...sums), Math.max(...sums)];
  for (let sum = least + gap / 2; sum < most; sum += gap * Math.SQRT2) {
    const cuts = crossings(ring, sum);
    for (let index = 0; index + 1 < cuts.length; index += 2) {
      const [from, to] = [cuts[index], cuts[index + 1]];
      if (from === undefined || to === undefined) continue;
      steps.push(["M", from, sum - from], ["L", to, sum - to]);
    }
  }
  return steps;
}

/** Where the line x + y = sum crosses the ring, by x. */
function crossings(ring: readonly XY[], sum: number): number[] {
  const found: number[] = [];
  ring.forEach(([ax, ay], index) => {
    const [bx, by] = ring[(index + 1) % ring.length] ?? [ax, ay];
    const [a, b] = [ax + ay - sum, bx + by - sum];
    if (a < 0 === b < 0) return;
    found.push(ax + ((bx - ax) * a) / (a - b));
  });
  return found.sort((one, other) => one - other);
}
