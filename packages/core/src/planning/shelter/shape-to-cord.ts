import { segmentsToPolygon } from "../../geometry/polygon-distance.ts";
import { pointToSegment, segmentToSegment } from "../../geometry/segment-distance.ts";
import type { GroundXY, ObstacleShape } from "../../site/obstacle.ts";

/** Level distance from an obstacle's shape to a cord from a to b [m]: 0 where they touch; ∞ for a shape without points. */
export function shapeToCordM(shape: ObstacleShape, a: GroundXY, b: GroundXY): number {
  switch (shape.type) {
    case "point":
      return pointToSegment(shape.at, a, b);
    case "line":
      return lineToCordM(shape.points, a, b);
    case "polygon":
      return shape.ring.length < 3 ? lineToCordM(shape.ring, a, b) : segmentsToPolygon([[a, b]], shape.ring);
  }
}

function lineToCordM(points: readonly GroundXY[], a: GroundXY, b: GroundXY): number {
  return points.reduce((least, point, index) => {
    const next = points[index + 1] ?? point;
    return Math.min(least, segmentToSegment(point, next, a, b));
  }, Infinity);
}
