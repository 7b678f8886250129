const WIDTH = 150;
const HEIGHT = 250;
const GROUND = 240;
const PX_PER_M = 105;

/** A person beside a measuring post, to scale; no face, and weight draws no shape. */
export function PersonPicture({ statureM }: { readonly statureM: number }) {
  const top = GROUND - statureM * PX_PER_M;
  const scale = (statureM * PX_PER_M) / FIGURE_PX;
  return (
    <svg class="person-picture" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <path class="person-ground" d={`M0 ${GROUND}H${WIDTH}`} />
      <path class="person-post" d={`M28 ${GROUND}V${GROUND - 2.1 * PX_PER_M}`} />
      {Array.from({ length: 21 }, (_, tick) => (
        <path
          key={tick}
          class="person-tick"
          d={`M28 ${GROUND - (tick + 1) * 0.1 * PX_PER_M}h${tick === 9 || tick === 19 ? 16 : 8}`}
        />
      ))}
      <path class="person-level" d={`M28 ${top}H${WIDTH - 8}`} />
      <g transform={`translate(94 ${GROUND}) scale(${scale})`}>
        <circle cx="0" cy="-91" r="9" />
        <path d="M-14 -72Q-14 -79 -6 -79H6Q14 -79 14 -72L17 -42H10L9 -60L8 0H1L0 -38L-1 0H-8L-9 -60L-10 -42H-17Z" />
      </g>
    </svg>
  );
}

/** Height of the figure below, as drawn. */
const FIGURE_PX = 100;
