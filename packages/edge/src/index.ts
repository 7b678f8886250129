export * from "./format/public.ts";
export * from "./solver/highs-solver.ts";
