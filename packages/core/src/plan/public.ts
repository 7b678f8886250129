export type * from "./camp.ts";
export type * from "./house-rules.ts";
export type * from "./kit.ts";
export type * from "./plan.ts";
