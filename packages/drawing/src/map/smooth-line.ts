import type { PathStep, XY } from "../scene/scene.ts";

/** A curve through all points in turn (Catmull and Rom), open or closed. */
export function smoothLine(points: readonly XY[], closed = false): PathStep[] {
  const [first] = points;
  if (first === undefined) return [];
  const at = (index: number): XY => {
    const last = points.length - 1;
    const wrapped = closed ? (index + points.length) % points.length : Math.min(last, Math.max(0, index));
    return points[wrapped] ?? first;
  };
  const steps: PathStep[] = [["M", first[0], first[1]]];
  const count = closed ? points.length : points.length - 1;
  for (let index = 0; index < count; index++) {
    const [a, b, c, d] = [at(index - 1), at(index), at(index + 1), at(index + 2)];
    steps.push([
      "C",
      b[0] + (c[0] - a[0]) / 6,
      b[1] + (c[1] - a[1]) / 6,
      c[0] - (d[0] - b[0]) / 6,
      c[1] - (d[1] - b[1]) / 6,
      c[0],
      c[1],
    ]);
  }
  return closed ? [...steps, ["Z"]] : steps;
}

/** The line moved sideways by `by`, to its right as it runs down the paper's y. */
export function aside(points: readonly XY[], by: number): XY[] {
  return points.map((point, index) => {
    const before = points[Math.max(0, index - 1)] ?? point;
    const after = points[Math.min(points.length - 1, index + 1)] ?? point;
    const length = Math.hypot(after[0] - before[0], after[1] - before[1]) || 1;
    return [
      point[0] - ((after[1] - before[1]) / length) * by,
      point[1] + ((after[0] - before[0]) / length) * by,
    ];
  });
}

/** Places along a line, `step` apart, with the way it runs there [rad]. */
export function along(points: readonly XY[], step: number): { readonly at: XY; readonly turnRad: number }[] {
  const found: { at: XY; turnRad: number }[] = [];
  let left = step / 2;
  for (let index = 1; index < points.length; index++) {
    const [a, b] = [points[index - 1], points[index]];
    if (a === undefined || b === undefined) continue;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const turnRad = Math.atan2(b[1] - a[1], b[0] - a[0]);
    for (; left <= length; left += step) {
      const share = left / length;
      found.push({ at: [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share], turnRad });
    }
    left -= length;
  }
  return found;
}
