export * from "./at.ts";
export * from "./bracketed-root.ts";
