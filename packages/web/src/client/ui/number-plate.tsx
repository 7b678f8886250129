import type { Verdict } from "@nightspan/core";

interface NumberPlateProps {
  readonly id: string;
  readonly verdict: Verdict;
}

/** A berth's number on the plate of its verdict, shaped as on the map. */
export function NumberPlate({ id, verdict }: NumberPlateProps) {
  return <span class={`number number-${verdict}`}>{id}</span>;
}
