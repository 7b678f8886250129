import type { CampDocument } from "./camp-document.ts";

/** The whole file: keys in the order they came in, unknown fields kept, one newline at the end. */
export function writeCamp(document: CampDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}
