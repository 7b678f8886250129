export * from "./lengths.ts";
export * from "./masses.ts";
