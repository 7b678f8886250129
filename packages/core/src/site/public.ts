export type * from "./tree.ts";
export type * from "./obstacle.ts";
export type * from "./places-types.ts";
export * from "./berth-places.ts";
export * from "./estimated-height.ts";
export * from "./hexagon-footprint.ts";
export * from "./shape-distance.ts";
export * from "./usable-tree.ts";
export * from "./place-faults.ts";
