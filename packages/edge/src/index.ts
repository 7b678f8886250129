export { ENGINE } from "./engine.ts";
export * from "./format/public.ts";
export * from "./solver/highs-solver.ts";
export * from "./units/public.ts";
export * from "./words/public.ts";
