// Made from handbook/sources.json by `npm run sources`. Do not edit by hand.
export type SourceKey =
  | "ansur-ii"
  | "asme-b30-9"
  | "camp-file"
  | "catenary"
  | "common-practice"
  | "de-leva-1996"
  | "drillis-contini-1966"
  | "elastic-catenary"
  | "hang-chain"
  | "house-convention"
  | "house-rules"
  | "layout-search"
  | "maker-plate"
  | "standard-gravity"
  | "two-cable";
