import type { Refusal } from "../outcome/outcome.ts";
import { between } from "./between.ts";

/** What both cable models ask of their input, by field. */
export function cableRefusals(input: {
  readonly spanM: number;
  readonly lengthM: number;
  readonly riseM: number;
  readonly weightNPerM: number;
}): readonly Refusal[] {
  const { spanM, lengthM, riseM, weightNPerM } = input;
  const chordM = Math.hypot(spanM, riseM);
  return [
    ...between("spanM", spanM, 1e-6, 1e6),
    ...between("lengthM", lengthM, 1e-6, 1e9),
    ...between("riseM", riseM, -1e6, 1e6),
    ...between("weightNPerM", weightNPerM, 1e-9, 1e9),
    ...(lengthM > MOST_CHORDS * chordM
      ? [{ field: "lengthM", got: lengthM, need: `at most ${MOST_CHORDS} × the straight distance` }]
      : []),
    ...(Math.abs(riseM) > STEEPEST * spanM
      ? [{ field: "riseM", got: riseM, need: `within ${STEEPEST} × the span` }]
      : []),
  ];
}
const MOST_CHORDS = 1e6;
const STEEPEST = 1e6;
