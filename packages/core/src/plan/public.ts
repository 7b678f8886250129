export type * from "./camp.ts";
export type * from "./house-rules.ts";
export type * from "./kit.ts";
export type * from "./plan.ts";
export type * from "./explanation.ts";
export * from "./defaults.ts";
export * from "./rule-defaults.ts";
export * from "./cautions.ts";
export * from "./cost-weights.ts";
