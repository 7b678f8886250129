export type * from "./linear-solver.ts";
export type * from "./berth-search-types.ts";
export * from "./body-mark.ts";
export * from "./berth-search.ts";
export * from "./plan-camp.ts";
export * from "./layout-model.ts";
export * from "./layout-types.ts";
