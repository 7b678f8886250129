export type * from "./hang-types.ts";
export * from "./hang.ts";
export * from "./de-leva.ts";
export { STEPPED_SPAN_ERROR_RATIO } from "./hang-errors.ts";
export { seatHeightOf } from "./hang-constants.ts";
export * from "./hang-screen.ts";
export * from "./two-cable.ts";
export * from "./catenary.ts";
export * from "./elastic-catenary.ts";
