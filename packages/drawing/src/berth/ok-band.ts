import type { BandRange, OkRange } from "@nightspan/core";
import type { Item, XY } from "../scene/scene.ts";
import { box, group, line, polygon } from "../scene/shapes.ts";

/** Width of the range beside the trunk [px]. */
export const BAND_WIDTH = 14;

/** [px] */
const LEAST_WHISKER = 4;

export interface OkBand {
  /** Left edge of the band. */
  readonly x: number;
  /** Which way the trunk lies from the band. */
  readonly towards: -1 | 1;
  readonly range: OkRange;
  readonly planned: number;
  readonly unsure?: BandRange;
  /** Paper y of a height. */
  readonly yOf: (heightM: number) => number;
}

/** A range that still serves, ticked at its ends; the planned mark a solid wedge, how unsure it is as whiskers. */
export function okBand({ x, towards, range, planned, unsure, yOf }: OkBand): Item {
  const [top, bottom] = [yOf(range.high), yOf(range.low)];
  const ends = [top, bottom].map((y) =>
    line(
      [
        [x - 4, y],
        [x + BAND_WIDTH + 4, y],
      ],
      { stroke: "cloth", width: 2, cap: "butt" },
    ),
  );
  const trunkSide = towards === 1 ? x + BAND_WIDTH : x;
  const y = yOf(planned);
  const wedge: readonly XY[] = [
    [trunkSide - towards * 2, y],
    [trunkSide + towards * 10, y - 7],
    [trunkSide + towards * 10, y + 7],
  ];
  return group(
    [
      box([x, top], BAND_WIDTH, bottom - top, {
        fill: "cloth-tint",
        stroke: "cloth",
        width: 1.25,
        join: "miter",
      }),
      ...ends,
      polygon(wedge, { fill: "ink", class: "ns-planned" }),
      ...(unsure === undefined ? [] : whiskers(trunkSide + towards * 13, unsure, yOf)),
    ],
    { class: "ns-ok" },
  );
}

/** Nothing where they would be no longer than the wedge is thick. */
function whiskers(x: number, [low, high]: BandRange, yOf: OkBand["yOf"]): Item[] {
  const thin = { stroke: "ink", width: 1.25, cap: "butt" } as const;
  const [top, bottom] = [yOf(high), yOf(low)];
  if (!(bottom - top >= LEAST_WHISKER)) return [];
  return [
    line(
      [
        [x, top],
        [x, bottom],
      ],
      thin,
    ),
    ...[top, bottom].map((y) =>
      line(
        [
          [x - 3.5, y],
          [x + 3.5, y],
        ],
        thin,
      ),
    ),
  ];
}
