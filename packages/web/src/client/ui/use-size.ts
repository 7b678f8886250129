import { useSignal, type Signal } from "@preact/signals";
import type { RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";

export interface Size {
  readonly widthPx: number;
  readonly heightPx: number;
}

/** How large an element is on the page; undefined until it is laid out. */
export function useSize(): readonly [RefObject<HTMLDivElement | null>, Signal<Size | undefined>] {
  const frame = useRef<HTMLDivElement | null>(null);
  const size = useSignal<Size | undefined>(undefined);
  useEffect(() => {
    const element = frame.current;
    if (element === null) return undefined;
    let waiting = 0;
    // Measured in the next frame: a drawing that follows at once would change what is being measured.
    const observer = new ResizeObserver(() => {
      cancelAnimationFrame(waiting);
      waiting = requestAnimationFrame(() => {
        const next = { widthPx: element.clientWidth, heightPx: element.clientHeight };
        const { widthPx, heightPx } = size.peek() ?? { widthPx: 0, heightPx: 0 };
        if (next.widthPx !== widthPx || next.heightPx !== heightPx) size.value = next;
      });
    });
    observer.observe(element);
    return () => {
      cancelAnimationFrame(waiting);
      observer.disconnect();
    };
  }, []);
  return [frame, size];
}
