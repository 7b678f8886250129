export * from "./angle.ts";
export * from "./constants.ts";
