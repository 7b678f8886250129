export * from "./format/public.ts";
