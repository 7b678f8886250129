import type { Scene } from "@nightspan/drawing";
import { useMemo } from "preact/hooks";
import { Drawing } from "./drawing.tsx";
import { useSize } from "./use-size.ts";

interface FittedSceneProps {
  /** Draws for a place so wide. */
  readonly scene: (widthPx: number) => Scene;
  /** What the picture is of: where any of it changes, it is drawn anew. */
  readonly of: readonly unknown[];
  readonly class?: string;
  readonly mostPx?: number;
}

/** A drawing as wide as its place. */
export function FittedScene({ scene, of, class: name = "", mostPx = Infinity }: FittedSceneProps) {
  const [frame, size] = useSize();
  const widthPx = Math.min(size.value?.widthPx ?? 0, mostPx);
  const drawn = useMemo(() => (widthPx < LEAST_PX ? undefined : scene(widthPx)), [...of, widthPx]);
  return (
    <div class={`fitted ${name}`} ref={frame}>
      {drawn === undefined ? null : <Drawing scene={drawn} />}
    </div>
  );
}

const LEAST_PX = 200;
