import { groundPlan } from "@nightspan/drawing";
import type { Answer } from "../state/plan-store.ts";
import type { View } from "./view.ts";

/** Berths are drawn to scale from here on [px/m]; below it they are signs. */
const TRUE_SCALE_PX_PER_M = 18.5;
const MOST_PX_PER_M = 60;
const MARGIN_M = 3.2;

/**
 * What the map shows at first: all berths where they can be drawn to scale; else, on a small screen, the part round
 * the berth that needs the reader most; else nothing of its own, and the whole wood is shown.
 */
export function firstView({ plan, camp }: Answer, widthPx: number, heightPx: number): View | undefined {
  const { berths, sketch } = groundPlan(plan, camp);
  const ends = berths.flatMap(({ head, foot }) => [head.at, foot.at]);
  if (sketch || ends.length === 0) return undefined;
  const [xs, ys] = [ends.map(([x]) => x), ends.map(([, y]) => y)];
  const [west, east] = [Math.min(...xs) - MARGIN_M, Math.max(...xs) + MARGIN_M];
  const [south, north] = [Math.min(...ys) - MARGIN_M, Math.max(...ys) + MARGIN_M];
  const pxPerM = Math.min(widthPx / (east - west), heightPx / (north - south), MOST_PX_PER_M);
  if (pxPerM >= TRUE_SCALE_PX_PER_M) return { centreM: [(west + east) / 2, (south + north) / 2], pxPerM };
  if (widthPx >= SMALL_PX) return undefined;
  const wanted = berths.find(({ verdict }) => verdict !== "clear") ?? berths[0];
  if (wanted === undefined) return undefined;
  const [a, b] = [wanted.head.at, wanted.foot.at];
  return { centreM: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], pxPerM: TRUE_SCALE_PX_PER_M * 1.3 };
}

const SMALL_PX = 700;
