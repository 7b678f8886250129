export type ObstacleKind = "fire" | "path" | "water" | "building" | "rock" | "overhead" | "other";

export type GroundXY = readonly [xM: number, yM: number];

/** A shape on the ground in local metres; polygons are closed rings without holes, first point not repeated. */
export type ObstacleShape =
  | { readonly type: "point"; readonly at: GroundXY }
  | { readonly type: "line"; readonly points: readonly GroundXY[] }
  | { readonly type: "polygon"; readonly ring: readonly GroundXY[] };

/** Something to keep away from. For "overhead" the set-back is the reach of what may fall. */
export interface Obstacle {
  readonly id: string;
  readonly kind: ObstacleKind;
  readonly shape: ObstacleShape;
  readonly setbackM: number;
}
