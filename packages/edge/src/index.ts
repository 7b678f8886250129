export { ENGINE } from "./engine.ts";
export * from "./export/public.ts";
export * from "./format/public.ts";
export * from "./import/public.ts";
export * from "./models/public.ts";
export * from "./solver/highs-solver.ts";
export * from "./solver/tableau-solver.ts";
export * from "./units/public.ts";
export * from "./words/public.ts";
