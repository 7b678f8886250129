import type { HouseRules } from "@nightspan/core";
import { length } from "@nightspan/edge";
import { useSize } from "../ui/use-size.ts";
import { WORDS } from "../words.ts";

const LEAST_PX = 240;
const ROW_PX = 34;
const NAME_PX = 84;
const FIGURE_PX = 64;
const KINDS = ["fire", "path", "water", "building", "rock", "other"] as const;

/** How far berths keep from each thing, all to one scale: the ticks point to what is kept clear. */
export function SetbackPicture({ setbacksM }: { readonly setbacksM: HouseRules["setbacksM"] }) {
  const [frame, size] = useSize();
  const widthPx = size.value?.widthPx ?? 0;
  const farthest = Math.max(...KINDS.map((kind) => setbacksM[kind].value), 1);
  const pxPerM = Math.max(0, widthPx - NAME_PX - FIGURE_PX) / farthest;
  const heightPx = KINDS.length * ROW_PX;
  return (
    <figure class="rules-picture" ref={frame} aria-hidden="true">
      {widthPx < LEAST_PX ? null : (
        <svg viewBox={`0 0 ${widthPx} ${heightPx}`} width={widthPx} height={heightPx}>
          {KINDS.map((kind, row) => (
            <Distance
              key={kind}
              name={WORDS.rules.kinds[kind]}
              m={setbacksM[kind].value}
              px={setbacksM[kind].value * pxPerM}
              y={row * ROW_PX + ROW_PX / 2}
            />
          ))}
        </svg>
      )}
    </figure>
  );
}

interface DistanceProps {
  readonly name: string;
  readonly m: number;
  readonly px: number;
  readonly y: number;
}

function Distance({ name, m, px, y }: DistanceProps) {
  const end = NAME_PX + px;
  const ticks = Array.from({ length: Math.floor(px / TICK_PX) }, (_, index) => end - index * TICK_PX);
  return (
    <>
      <text x={NAME_PX - 10} y={y + 5} text-anchor="end">
        {name}
      </text>
      <path class="rp-trunk" d={`M${NAME_PX} ${y - 11}V${y + 11}`} />
      <path class="rp-line" d={`M${NAME_PX} ${y}H${end}M${end} ${y - 9}V${y + 9}`} />
      <path class="rp-line" d={ticks.map((x) => `M${x} ${y}l-6 -5`).join("")} />
      <text x={end + 8} y={y + 5}>
        {length(m, m % 1 === 0 ? 0 : 1)}
      </text>
    </>
  );
}

const TICK_PX = 12;
