import { beadSpan } from "@nightspan/drawing";
import { useMemo } from "preact/hooks";
import { Drawing } from "./drawing.tsx";

interface BeadProps {
  readonly step: number;
  readonly of: number;
}

/** How far along: a bead on a line between two posts. */
export function Bead({ step, of }: BeadProps) {
  const scene = useMemo(() => beadSpan(step, of, 340), [step, of]);
  return <Drawing scene={scene} class="bead" />;
}
