import type { XY } from "../scene/scene.ts";
import type { GroundPlan, MapBerth } from "./ground-plan.ts";
import { inView, toPx, type MapView } from "./map-view.ts";

/** A berth where it lies on the paper. */
export interface PlacedBerth {
  readonly berth: MapBerth;
  readonly head: XY;
  readonly foot: XY;
  readonly middle: XY;
}

/** The berths that are on the paper, or whose ends may reach onto it. */
export function placedBerths(ground: GroundPlan, view: MapView): PlacedBerth[] {
  return ground.berths.flatMap((berth): PlacedBerth[] => {
    const [head, foot] = [toPx(view, berth.head.at), toPx(view, berth.foot.at)];
    const middle: XY = [(head[0] + foot[0]) / 2, (head[1] + foot[1]) / 2];
    const near = inView(view, middle, Math.hypot(foot[0] - head[0], foot[1] - head[1]));
    return near ? [{ berth, head, foot, middle }] : [];
  });
}
