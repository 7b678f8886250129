import type { HouseRules } from "@nightspan/core";
import { length } from "@nightspan/edge";
import { useSize } from "../ui/use-size.ts";
import { fill, WORDS } from "../words.ts";

const LEAST_PX = 240;
/** Ground shown left of the first trunk and right of the farthest [m]. */
const LEFT_M = 0.7;
const RIGHT_M = 0.5;
/** Where the picture draws its strap, and how high the trunks go [m]. */
const STRAP_M = 1.7;
const TOP_M = 2.45;
const GROUND_PX = 54;

/** The limits as they stand in the wood: how near and far, how high, how steep, how stout. */
export function RulesPicture({ rules }: { readonly rules: HouseRules }) {
  const [frame, size] = useSize();
  const widthPx = size.value?.widthPx ?? 0;
  return (
    <figure class="rules-picture" ref={frame} aria-hidden="true">
      {widthPx < LEAST_PX ? null : <Elevation rules={rules} widthPx={widthPx} />}
    </figure>
  );
}

interface ElevationProps {
  readonly rules: HouseRules;
  readonly widthPx: number;
}

function Elevation({ rules, widthPx }: ElevationProps) {
  const farM = rules.spanMaxM.value + LEFT_M + RIGHT_M;
  const pxPerM = widthPx / farM;
  const groundY = TOP_M * pxPerM;
  const place: Place = {
    x: (m) => (m + LEFT_M) * pxPerM,
    y: (m) => groundY - m * pxPerM,
    pxPerM,
  };
  return (
    <svg viewBox={`0 0 ${widthPx} ${groundY + GROUND_PX}`} width={widthPx} height={groundY + GROUND_PX}>
      <Caps rules={rules} place={place} widthPx={widthPx} />
      <Posts rules={rules} place={place} />
      <Hang rules={rules} place={place} />
      <path class="rp-ground" d={`M0 ${groundY}H${widthPx}`} />
    </svg>
  );
}

interface Place {
  readonly x: (m: number) => number;
  readonly y: (m: number) => number;
  readonly pxPerM: number;
}

interface PartProps {
  readonly rules: HouseRules;
  readonly place: Place;
}

/** The near tree and the wished one whole; the least and the most span as dashed posts. */
function Posts({ rules, place }: PartProps) {
  const { spanMinM, spanIdealM, spanMaxM, trunkMinM } = rules;
  const half = trunkMinM.value / 2;
  const trunk = (m: number, name: string) => (
    <path
      class={name}
      d={`M${place.x(m - half)} ${place.y(0)}V${place.y(TOP_M - 0.1)}M${place.x(m + half)} ${place.y(0)}V${place.y(TOP_M - 0.1)}`}
    />
  );
  const labelY = place.y(0) + 22;
  return (
    <>
      {trunk(0, "rp-trunk")}
      {trunk(spanMinM.value, "rp-post")}
      {trunk(spanMaxM.value, "rp-post")}
      {trunk(spanIdealM.value, "rp-trunk")}
      {(
        [
          [spanMinM.value, WORDS.rules.pictureLeast, 0],
          [spanIdealM.value, WORDS.rules.pictureWished, 20],
          [spanMaxM.value, WORDS.rules.pictureMost, 0],
        ] as const
      ).map(([m, words, down]) => (
        <text key={words} x={place.x(m)} y={labelY + down} text-anchor="middle">
          {fill(words, { span: length(m, 1) })}
        </text>
      ))}
      <text x={place.x(0)} y={labelY} text-anchor="middle">
        {fill(WORDS.rules.pictureTrunk, { trunk: Math.round(trunkMinM.value * 100) })}
      </text>
    </>
  );
}

/** A hammock between near and wished tree, and how steep its straps may come. */
function Hang({ rules, place }: PartProps) {
  const span = rules.spanIdealM.value;
  const middle = (rules.angleMinRad.value + rules.angleMaxRad.value) / 2;
  const [left, right] = [rules.trunkMinM.value / 2, span - rules.trunkMinM.value / 2];
  const out = Math.min(0.8, (right - left) / 4);
  const [gatherX, gatherY] = [left + out, STRAP_M - out * Math.tan(middle)];
  const low = Math.max(0.35, gatherY - 0.72);
  const ray = (angle: number) => {
    const [dx, dy] = [1.15 * Math.cos(angle), 1.15 * Math.sin(angle)];
    return `M${place.x(left)} ${place.y(STRAP_M)}L${place.x(left + dx)} ${place.y(STRAP_M - dy)}`;
  };
  const at = (x: number, y: number) => `${place.x(x)} ${place.y(y)}`;
  return (
    <>
      <path class="rp-fan" d={`${ray(rules.angleMinRad.value)}${ray(rules.angleMaxRad.value)}`} />
      <path
        class="rp-strap"
        d={`M${at(left, STRAP_M)}L${at(gatherX, gatherY)}M${at(right, STRAP_M)}L${at(span - gatherX, gatherY)}`}
      />
      <path
        class="rp-cloth"
        d={`M${at(gatherX, gatherY)}Q${at(span / 2, 2 * low - gatherY)} ${at(span - gatherX, gatherY)}`}
      />
      <text x={place.x(left + 1.2)} y={place.y(STRAP_M - 1.15 * Math.sin(rules.angleMinRad.value)) - 6}>
        {fill(WORDS.rules.pictureAngle, {
          least: inDegrees(rules.angleMinRad.value),
          most: inDegrees(rules.angleMaxRad.value),
        })}
      </text>
    </>
  );
}

/** Caps on heights as level lines, where somebody sets them. */
function Caps({ rules, place, widthPx }: PartProps & { readonly widthPx: number }) {
  const caps = [
    { cap: rules.strapHeightMaxM, words: WORDS.rules.pictureStrap },
    { cap: rules.lowPointMaxM, words: WORDS.rules.pictureLow },
  ] as const;
  return (
    <>
      {caps.map(({ cap, words }) =>
        cap === undefined ? null : (
          <g key={words}>
            <path class="rp-cap" d={`M0 ${place.y(cap.value)}H${widthPx}`} />
            <text x={widthPx - 8} y={place.y(cap.value) - 6} text-anchor="end">
              {fill(words, { height: length(cap.value) })}
            </text>
          </g>
        ),
      )}
    </>
  );
}

function inDegrees(radians: number): number {
  return Math.round((radians * 180) / Math.PI);
}
