import type { TarpEnd, TarpPanel } from "../../plan/tarp-types.ts";
import type { HungPlace } from "./shelter-place.ts";

/**
 * Cloth beyond head and feet of a sleeper who lies on the diagonal, level: the head to one side by the sleeper's hand, the
 * feet to the other.
 */
export function diagonalRoom(
  { hang, kit }: HungPlace,
  panels: readonly TarpPanel[],
): Readonly<Record<TarpEnd, number>> {
  const turn = kit.sleeper.hand === "left" ? 1 : -1;
  const { head, ankle } = hang.shape.body;
  const [headFrom] = reachAt(panels, turn * ASIDE_M);
  const [, footTo] = reachAt(panels, -turn * ASIDE_M);
  return { head: head[0] - headFrom, foot: footTo - (ankle[0] + FOOT_M) };
}

/** Head and feet lie so far off the middle line, 10 to 15° over a lying body [m]. Source: common-practice. */
const ASIDE_M = 0.2;
/** Ankle to toes and quilt [m]. */
const FOOT_M = 0.15;

/** How far the cloth reaches along a line beside the ridge, seen from above. */
function reachAt(panels: readonly TarpPanel[], yM: number): readonly [fromXM: number, toXM: number] {
  let [from, to] = [Infinity, -Infinity];
  for (const { name, corners } of panels) {
    if (name === "head-door" || name === "foot-door") continue;
    corners.forEach((a, index) => {
      const b = corners[(index + 1) % corners.length] ?? a;
      if (a[1] < yM === b[1] < yM) return;
      const x = a[0] + ((yM - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
      [from, to] = [Math.min(from, x), Math.max(to, x)];
    });
  }
  return [from, to];
}
