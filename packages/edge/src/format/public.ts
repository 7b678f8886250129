export type * from "./camp-document.ts";
export { CAMP_FORMAT } from "./camp-schema.ts";
export { MOST_BYTES } from "./json-text.ts";
export { openCamp, readCamp } from "./open-camp.ts";
export { writeCamp } from "./write-camp.ts";
