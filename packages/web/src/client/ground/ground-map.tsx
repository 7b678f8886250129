import type { Camp, Obstacle } from "@nightspan/core";
import { useSignal } from "@preact/signals";
import { MapWindow } from "../map/map-window.tsx";
import type { View } from "../map/view.ts";
import type { Place } from "../state/draw-ground.ts";
import { useSize } from "../ui/use-size.ts";
import { WORDS } from "../words.ts";
import { chosen, places, pressGround } from "./draw-state.ts";

type Ground = Camp["ground"];

/** The ground as it is drawn: trees, what to keep clear of with its reach, meeting places, and what is under way. */
export function GroundMap({ ground }: { readonly ground: Ground }) {
  const [frame, size] = useSize();
  const kept = useSignal<View | undefined>(undefined);
  const { widthPx, heightPx } = size.value ?? { widthPx: 0, heightPx: 0 };
  const view = kept.value ?? wholeOf(ground, widthPx, heightPx);
  return (
    <div class="ground-map" ref={frame}>
      {widthPx === 0 || heightPx === 0 ? null : (
        <MapWindow
          drawn={view}
          slow={false}
          onRest={(next) => (kept.value = next)}
          onWhole={() => (kept.value = undefined)}
          onPick={(refs, at) => {
            // The ground stays where the finger found it, however far the new thing lies out.
            kept.value = view;
            pressGround(refs, at);
          }}
        >
          <Picture ground={ground} view={view} widthPx={widthPx} heightPx={heightPx} />
        </MapWindow>
      )}
    </div>
  );
}

const BARE_M = 30;
const MARGIN_M = 4;
const FINGER_PX = 22;
const LEAST_TREE_PX = 5;

interface PictureProps {
  readonly ground: Ground;
  readonly view: View;
  readonly widthPx: number;
  readonly heightPx: number;
}

function Picture({ ground, view, widthPx, heightPx }: PictureProps) {
  const on = (place: Place): Place => [
    widthPx / 2 + (place[0] - view.centreM[0]) * view.pxPerM,
    heightPx / 2 - (place[1] - view.centreM[1]) * view.pxPerM,
  ];
  const spots = [ground?.meetingPoint, ground?.muster, ground?.fallback];
  const letters = ["meeting_point", "muster", "fallback"] as const;
  return (
    <svg width={widthPx} height={heightPx} role="img" aria-label={WORDS.draw.title}>
      {(ground?.obstacles ?? []).map((obstacle) => (
        <ObstacleMark key={obstacle.id} obstacle={obstacle} on={on} pxPerM={view.pxPerM} />
      ))}
      {(ground?.trees ?? []).map(({ id, tag, xM, yM, dbhM, condition }) => {
        const [x, y] = on([xM, yM]);
        const ref = `tree/${id}`;
        return (
          <g key={id} data-ref={ref} class={chosen.value === ref ? "drawn-chosen" : ""}>
            <circle class="drawn-finger" cx={x} cy={y} r={FINGER_PX} />
            <circle
              class={`drawn-tree drawn-${condition}`}
              cx={x}
              cy={y}
              r={Math.max((dbhM / 2) * view.pxPerM, LEAST_TREE_PX)}
            />
            <text class="drawn-word" x={x + 9} y={y - 7}>
              {tag}
            </text>
          </g>
        );
      })}
      {spots.map((spot, n) => {
        const kind = letters[n];
        if (spot?.at === undefined || kind === undefined) return null;
        const [x, y] = on(spot.at);
        return (
          <g key={kind}>
            <path class="drawn-spot" d={`M${x} ${y}v-18l14 5l-14 5`} />
            <text class="drawn-word" x={x + 6} y={y + 12}>
              {WORDS.draw.kinds[kind]}
            </text>
          </g>
        );
      })}
      <path class="drawn-under-way" d={pathOf(places.value.map(on))} />
      {places.value.map(on).map(([x, y]) => (
        <circle key={`${x} ${y}`} class="drawn-corner" cx={x} cy={y} r={5} />
      ))}
    </svg>
  );
}

interface ObstacleMarkProps {
  readonly obstacle: Obstacle;
  readonly on: (place: Place) => Place;
  readonly pxPerM: number;
}

/** What berths keep clear of, in its reach: a circle round a point, a band along a line or an outline. */
function ObstacleMark({ obstacle: { id, kind, shape, setbackM }, on, pxPerM }: ObstacleMarkProps) {
  const corners = cornersOf(shape).map(on);
  const [first = [0, 0]] = corners;
  const ref = `obstacle/${id}`;
  const reach = setbackM * pxPerM;
  const d = pathOf(corners) + (shape.type === "polygon" ? "Z" : "");
  return (
    <g data-ref={ref} class={chosen.value === ref ? "drawn-chosen" : ""}>
      {shape.type === "point" ? (
        <>
          <circle class="drawn-reach" cx={first[0]} cy={first[1]} r={reach} />
          <path class="drawn-mark" d={`M${first[0] - 6} ${first[1] - 6}l12 12m0 -12l-12 12`} />
        </>
      ) : (
        <>
          <path class="drawn-band" d={d} stroke-width={2 * reach} />
          <path class="drawn-mark" d={d} />
        </>
      )}
      <text class="drawn-word" x={first[0] + 9} y={first[1] - 7}>
        {WORDS.ground.kinds[kind]}
      </text>
    </g>
  );
}

function cornersOf(shape: Obstacle["shape"]): readonly Place[] {
  if (shape.type === "point") return [shape.at];
  return shape.type === "line" ? shape.points : shape.ring;
}

function pathOf(points: readonly Place[]): string {
  return points.map(([x, y], n) => `${n === 0 ? "M" : "L"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");
}

/** All that is drawn in the window; bare ground is as wide as a small camp. */
function wholeOf(ground: Ground, widthPx: number, heightPx: number): View {
  const points: readonly Place[] = [
    ...(ground?.trees ?? []).map(({ xM, yM }): Place => [xM, yM]),
    ...(ground?.obstacles ?? []).flatMap(({ shape }) => cornersOf(shape)),
  ];
  const least = (axis: 0 | 1) => points.reduce((low, one) => Math.min(low, one[axis]), Infinity);
  const most = (axis: 0 | 1) => points.reduce((high, one) => Math.max(high, one[axis]), -Infinity);
  if (points.length < 2) {
    return { centreM: points[0] ?? [0, 0], pxPerM: Math.max(1, Math.min(widthPx, heightPx) / BARE_M) };
  }
  const wide = most(0) - least(0) + 2 * MARGIN_M;
  const tall = most(1) - least(1) + 2 * MARGIN_M;
  return {
    centreM: [(least(0) + most(0)) / 2, (least(1) + most(1)) / 2],
    pxPerM: Math.min(widthPx / wide, heightPx / tall),
  };
}
