import type { Verdict } from "@nightspan/core";

interface NumberPlateProps {
  readonly id: string;
  readonly verdict: Verdict;
}

const HEIGHT = 32;

/** A berth's number on the plate of its verdict, shaped as on the map. */
export function NumberPlate({ id, verdict }: NumberPlateProps) {
  const width = 22 + 11 * id.length + (verdict === "look-again" ? 12 : 0);
  return (
    <svg
      class={`number number-${verdict}`}
      viewBox={`0 0 ${width} ${HEIGHT}`}
      width={width}
      height={HEIGHT}
      role="img"
      aria-label={id}
    >
      <polygon points={outline(verdict, width)} />
      <text x={width / 2} y="22.5" text-anchor="middle">
        {id}
      </text>
    </svg>
  );
}

function outline(verdict: Verdict, width: number): string {
  const [left, right, top, foot] = [1, width - 1, 1, HEIGHT - 1];
  if (verdict === "look-again") {
    return `${left},16 10,${top} ${right - 9},${top} ${right},16 ${right - 9},${foot} 10,${foot}`;
  }
  const cut = verdict === "do-not-hang" ? 8 : 0;
  return `${left},${top} ${right - cut},${top} ${right},${top + cut} ${right},${foot} ${left + cut},${foot} ${left},${foot - cut}`;
}
