import type { Camp, NightClock } from "@nightspan/core";
import { fill, WORDS } from "../words.ts";

const SIDE = 220;
const MIDDLE = SIDE / 2;
const RING = 84;
/** Force 12 reaches the ring's middle: the stronger, the longer the arrow. */
const MOST_FORCE = 12;

interface WindCompassProps {
  readonly night: NonNullable<Camp["night"]>;
  readonly clock: NightClock | undefined;
}

/** Where the wind comes from and how strong: a barb for each force, on a ring with north up. */
export function WindCompass({ night, clock }: WindCompassProps) {
  const { windFromRad: from } = night;
  if (clock === undefined) return null;
  const { windForce: wind, gustForce: gust } = clock;
  const label = fill(WORDS.night.compass, {
    from: from === undefined ? "?" : Math.round((from * 180) / Math.PI),
    wind,
    gust,
  });
  return (
    <figure class="compass">
      <svg viewBox={`0 0 ${SIDE} ${SIDE}`} role="img" aria-label={label}>
        <circle class="compass-ring" cx={MIDDLE} cy={MIDDLE} r={RING} />
        {Array.from({ length: 16 }, (_, tick) => (
          <path
            key={tick}
            class="compass-tick"
            d={`M${MIDDLE} ${MIDDLE - RING}V${MIDDLE - RING + (tick % 4 === 0 ? 12 : 6)}`}
            transform={`rotate(${tick * 22.5} ${MIDDLE} ${MIDDLE})`}
          />
        ))}
        {(["N", "E", "S", "W"] as const).map((point, quarter) => (
          <text
            key={point}
            x={MIDDLE + Math.sin((quarter * Math.PI) / 2) * (RING + 15)}
            y={MIDDLE - Math.cos((quarter * Math.PI) / 2) * (RING + 15) + 5}
            text-anchor="middle"
          >
            {point}
          </text>
        ))}
        {from === undefined ? null : (
          <g transform={`rotate(${(from * 180) / Math.PI} ${MIDDLE} ${MIDDLE})`}>
            <Arrow reach={reach(gust)} name="compass-gust" />
            <Arrow reach={reach(wind)} name="compass-wind" />
          </g>
        )}
      </svg>
      <figcaption class="note">
        <span>{fill(WORDS.night.forceWind, { force: wind })}</span>
        <span>{fill(WORDS.night.forceGust, { force: gust })}</span>
      </figcaption>
    </figure>
  );
}

function reach(force: number): number {
  return RING * (1 - (2 * Math.min(force, MOST_FORCE)) / MOST_FORCE);
}

/** From the ring inwards; the gust goes on past the wind. */
function Arrow({ reach: end, name }: { readonly reach: number; readonly name: string }) {
  const tip = MIDDLE - end;
  return (
    <path
      class={name}
      d={`M${MIDDLE} ${MIDDLE - RING}V${tip}M${MIDDLE - 9} ${tip - 13}L${MIDDLE} ${tip}L${MIDDLE + 9} ${tip - 13}`}
    />
  );
}
