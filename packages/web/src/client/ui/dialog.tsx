import type { ComponentChildren } from "preact";
import { useEffect, useId, useRef } from "preact/hooks";
import { WORDS } from "../words.ts";
import { Button } from "./button.tsx";

interface DialogProps {
  readonly title: ComponentChildren;
  readonly children: ComponentChildren;
  readonly onClose: () => void;
}

/** A page in front of the page: the browser's own dialog, closed by its button or Escape. */
export function Dialog({ title, children, onClose }: DialogProps) {
  const frame = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const dialog = frame.current;
    if (dialog !== null && !dialog.open) dialog.showModal();
    return () => dialog?.close();
  }, []);
  return (
    <dialog
      ref={frame}
      class="dialog"
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onClick={(event) => {
        if (event.target === frame.current) onClose();
      }}
    >
      <div class="dialog-inside">
        <header class="dialog-top">
          <h2 id={id}>{title}</h2>
          <Button kind="plain" onPress={onClose}>
            {WORDS.app.close}
          </Button>
        </header>
        {children}
      </div>
    </dialog>
  );
}
