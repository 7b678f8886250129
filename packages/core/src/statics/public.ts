export type * from "./hang-types.ts";
export * from "./hang.ts";
export * from "./de-leva.ts";
