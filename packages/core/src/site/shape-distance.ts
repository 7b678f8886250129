import { boxAround, sides, steps, type Box, type Ring } from "../geometry/point.ts";
import { pointToConvex, polygonToPolygon, segmentsToPolygon } from "../geometry/polygon-distance.ts";
import type { GroundXY, ObstacleShape } from "./obstacle.ts";

/** Distance from an obstacle's shape to a convex footprint [m]: 0 where they touch; ∞ for a shape without points. */
export function shapeToFootprintM(shape: ObstacleShape, footprint: readonly GroundXY[]): number {
  switch (shape.type) {
    case "point":
      return pointToConvex(shape.at, footprint);
    case "line":
      return segmentsToPolygon(steps(shape.points), footprint);
    case "polygon":
      return shape.ring.length < 3
        ? openRing(shape.ring, footprint)
        : polygonToPolygon(shape.ring, footprint);
  }
}

/** The rectangle round an obstacle's shape. */
export function boxOfShape(shape: ObstacleShape): Box {
  if (shape.type === "point") return boxAround([shape.at]);
  return boxAround(shape.type === "line" ? shape.points : shape.ring);
}

function openRing(ring: Ring, footprint: readonly GroundXY[]): number {
  return segmentsToPolygon(ring.length === 1 ? steps(ring) : sides(ring), footprint);
}
