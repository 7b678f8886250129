export * from "./outcome.ts";
export * from "./finding.ts";
export type * from "./rule-key.ts";
export type * from "./source-key.ts";
export type * from "./basis.ts";
