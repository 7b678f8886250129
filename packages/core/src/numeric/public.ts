export * from "./at.ts";
export * from "./bracketed-root.ts";
export * from "./exact-squares.ts";
export * from "./seeded.ts";
