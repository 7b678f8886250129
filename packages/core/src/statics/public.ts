export type * from "./hang-types.ts";
