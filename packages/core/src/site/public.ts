export type * from "./tree.ts";
export type * from "./obstacle.ts";
export type * from "./places-types.ts";
