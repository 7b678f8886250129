import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { Button } from "./button.tsx";

interface FileButtonProps {
  readonly children: ComponentChildren;
  readonly accept: string;
  readonly onFile: (file: File) => void;
  readonly kind?: "action" | "plain";
  readonly size?: "wide";
}

/** Opens the device's own file chooser. */
export function FileButton({ children, accept, onFile, kind, size }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button
        {...(kind === undefined ? {} : { kind })}
        {...(size === undefined ? {} : { size })}
        onPress={() => input.current?.click()}
      >
        {children}
      </Button>
      <input
        ref={input}
        type="file"
        hidden
        accept={accept}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = "";
          if (file !== undefined) onFile(file);
        }}
      />
    </>
  );
}
