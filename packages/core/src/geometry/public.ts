export * from "./point.ts";
export * from "./penetration-depth.ts";
export * from "./segment-distance.ts";
export * from "./polygon-distance.ts";
export * from "./self-crossing.ts";
