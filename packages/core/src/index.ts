export * from "./outcome/public.ts";
export * from "./quantity/public.ts";
export * from "./numeric/public.ts";
export * from "./geometry/public.ts";
export * from "./statics/public.ts";
export * from "./site/public.ts";
export * from "./plan/public.ts";
export * from "./planning/public.ts";
