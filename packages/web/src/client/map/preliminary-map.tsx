import type { Camp, FirstPairs } from "@nightspan/core";
import { opened } from "../state/camp-store.ts";
import { firstPairs } from "../state/plan-store.ts";
import { WORDS } from "../words.ts";

/** Trees and the pairs spoken for so far, until there is a plan to draw: broken lines, no numbers, no verdict. */
export function PreliminaryMap() {
  const camp = opened.value?.camp;
  const found = firstPairs.value;
  if (camp?.ground === undefined || found === undefined || camp.ground.trees.length === 0)
    return <div class="map-window" />;
  return (
    <div class="map-window">
      <Pairs ground={camp.ground} found={found} />
    </div>
  );
}

const MARGIN_M = 3;

interface PairsProps {
  readonly ground: NonNullable<Camp["ground"]>;
  readonly found: FirstPairs;
}

function Pairs({ ground: { trees }, found }: PairsProps) {
  const at = new Map(trees.map(({ id, xM, yM }) => [id, [xM, yM] as const]));
  const [xs, ys] = [trees.map(({ xM }) => xM), trees.map(({ yM }) => yM)];
  const low = (values: readonly number[]) => values.reduce((least, one) => Math.min(least, one), Infinity);
  const high = (values: readonly number[]) => values.reduce((most, one) => Math.max(most, one), -Infinity);
  const [west, north] = [low(xs) - MARGIN_M, high(ys) + MARGIN_M];
  const [wide, tall] = [high(xs) - west + MARGIN_M, north - low(ys) + MARGIN_M];
  const lines = found.pairs.flatMap(([one, other]) => {
    const [a, b] = [at.get(one), at.get(other)];
    return a === undefined || b === undefined
      ? []
      : [`M${a[0] - west} ${north - a[1]}L${b[0] - west} ${north - b[1]}`];
  });
  return (
    <svg
      class="preliminary"
      viewBox={`0 0 ${wide} ${tall}`}
      preserveAspectRatio="xMidYMid meet"
      role="img"
      aria-label={WORDS.planning.preliminaryMap}
    >
      {trees.map(({ id, xM, yM, dbhM }) => (
        <circle
          key={id}
          class="preliminary-tree"
          cx={xM - west}
          cy={north - yM}
          r={Math.max(dbhM / 2, 0.2)}
        />
      ))}
      <path class="preliminary-pair" d={lines.join("")} />
    </svg>
  );
}
