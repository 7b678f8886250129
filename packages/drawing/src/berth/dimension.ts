import type { ColourToken } from "../colour/tokens.ts";
import type { Item, XY } from "../scene/scene.ts";
import { group, line } from "../scene/shapes.ts";

export interface DimensionStyle {
  readonly width: number;
  /** Half the side of the 45° ticks. */
  readonly tick: number;
  readonly stroke?: ColourToken;
}

/** A measured distance: thin line, a 45° tick at each end; arrowheads are kept for forces. */
export function dimension(from: XY, to: XY, { width, tick, stroke = "ink" }: DimensionStyle): Item {
  const thin = { stroke, width, cap: "butt" } as const;
  const ticks = [from, to].map(([x, y]) =>
    line(
      [
        [x - tick, y + tick],
        [x + tick, y - tick],
      ],
      { ...thin, width: width * 1.5 },
    ),
  );
  const across = from[0] === to[0];
  const caps = [from, to].map(([x, y]) =>
    across
      ? line(
          [
            [x - tick * 1.6, y],
            [x + tick * 1.6, y],
          ],
          thin,
        )
      : line(
          [
            [x, y - tick * 1.6],
            [x, y + tick * 1.6],
          ],
          thin,
        ),
  );
  return group([line([from, to], thin), ...caps, ...ticks], { class: "ns-dimension" });
}

/** A level distance with a gap of `gap` in its middle for the number. */
export function dimensionWithGap(from: XY, to: XY, gap: number, style: DimensionStyle): Item[] {
  const middle = (from[0] + to[0]) / 2;
  const thin = { stroke: style.stroke ?? "ink", width: style.width, cap: "butt" } as const;
  const end = ([x, y]: XY): Item[] => [
    line(
      [
        [x - style.tick, y + style.tick],
        [x + style.tick, y - style.tick],
      ],
      { ...thin, width: style.width * 1.5 },
    ),
    line(
      [
        [x, y - style.tick * 1.6],
        [x, y + style.tick * 1.6],
      ],
      thin,
    ),
  ];
  return [
    line([from, [middle - gap / 2, from[1]]], thin),
    line([[middle + gap / 2, to[1]], to], thin),
    ...end(from),
    ...end(to),
  ];
}
