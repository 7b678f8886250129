import type { Instruction } from "@nightspan/core";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";

interface SpotPictureProps {
  readonly move: Instruction;
  readonly tag: string;
}

/** The one move: the trunk it is made at, the strap as it is dashed, as it is to be whole, and an arrow. */
export function SpotPicture({ move: { end, action }, tag }: SpotPictureProps) {
  const atTrunk = action === "raise" || action === "lower";
  const mirrored = end === "head" ? "translate(360 0) scale(-1 1)" : undefined;
  return (
    <figure class={`spot-picture spot-picture-${end}`}>
      <svg viewBox="0 0 360 220" aria-hidden="true">
        <g transform={mirrored}>
          <path class="spot-trunk" d="M260 196Q274 184 274 160V18L284 10L300 20L312 12V160Q312 184 328 196" />
          <path class="spot-ground" d="M8 196H352" />
          {atTrunk ? <AtTrunk up={action === "raise"} /> : <AtAdjuster out={action === "let-out"} />}
        </g>
      </svg>
      <figcaption>
        <b>{WORDS.spot.end[end]}</b> <Name>{fill(WORDS.spot.where, { tag })}</Name>
      </figcaption>
    </figure>
  );
}

function AtTrunk({ up }: { readonly up: boolean }) {
  const [is, was] = up ? [54, 98] : [98, 54];
  const point = up ? 48 : 104;
  const wing = up ? 70 : 82;
  return (
    <>
      <path class="spot-was" d={`M274 ${was}L150 ${was + 58}Q90 ${was + 78} 8 ${was + 80}`} />
      <path class="spot-strap" d={`M274 ${is}L150 ${is + 58}`} />
      <path class="spot-cloth" d={`M150 ${is + 58}Q90 ${is + 76} 8 ${is + 80}`} />
      <path
        class="spot-strap"
        d={`M274 ${is - 4}Q293 ${is + 2} 312 ${is - 4}M274 ${is + 4}Q293 ${is + 10} 312 ${is + 4}`}
      />
      <circle class="spot-ring" cx="150" cy={is + 58} r="7" />
      <path class="spot-arrow" d={`M336 ${was}V${wing}`} />
      <path class="spot-arrow-head" d={`M336 ${point}L322 ${wing}H350Z`} />
    </>
  );
}

function AtAdjuster({ out }: { readonly out: boolean }) {
  const [x, y] = out ? [112, 142] : [176, 112];
  const [wasX, wasY] = out ? [176, 112] : [112, 142];
  const sign = out ? -1 : 1;
  return (
    <>
      <path class="spot-was" d={`M274 66L${wasX} ${wasY}Q${wasX - 46} ${wasY + 18} 8 ${wasY + 20}`} />
      <path class="spot-strap" d={`M274 66L${x} ${y}`} />
      <path class="spot-cloth" d={`M${x} ${y}Q${x - 46} ${y + 18} 8 ${y + 20}`} />
      <path class="spot-strap" d="M274 62Q293 68 312 62M274 70Q293 76 312 70" />
      <circle class="spot-ring" cx={x} cy={y} r="7" />
      <g transform={`translate(190 60) rotate(-25) scale(${sign} 1)`}>
        <path class="spot-arrow" d="M-34 0H16" />
        <path class="spot-arrow-head" d="M40 0L16 -14V14Z" />
      </g>
    </>
  );
}
