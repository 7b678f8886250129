import { redoEdit, undoEdit } from "./camp-store.ts";

/** Ctrl or ⌘ with Z undoes, with Shift too it redoes; inside a field the field's own undo goes first. */
export function followUndoKeys(): void {
  addEventListener("keydown", (event) => {
    const { target } = event;
    if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return;
    event.preventDefault();
    if (event.shiftKey) redoEdit();
    else undoEdit();
  });
}
