import type { Refusal } from "@nightspan/core";
import { editCamp, opened } from "./camp-store.ts";
import { readAt, writeAt, writePath, type DocumentPath } from "./document-path.ts";

/** A field of the camp in hand: where it stands in the file, and its name on the page. */
export interface FieldProps {
  readonly path: DocumentPath;
  readonly label: string;
}

/** The value of a field in the camp in hand. */
export function fieldValue(path: DocumentPath): unknown {
  return readAt(opened.value?.document, path);
}

/** Sets a field of the camp in hand; the refusals where the camp cannot bear it. */
export function setField(path: DocumentPath, value: unknown): readonly Refusal[] {
  return editCamp(writePath(path), (document) => writeAt(document, path, value));
}
