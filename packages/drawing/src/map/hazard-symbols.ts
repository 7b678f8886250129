import type { ColourToken } from "../colour/tokens.ts";
import type { Item, XY } from "../scene/scene.ts";
import { circle, group, line, path } from "../scene/shapes.ts";

export interface Rim {
  readonly rim: ColourToken;
  readonly fill?: ColourToken;
  readonly width?: number;
  readonly ref?: string;
}

/** A circle to keep out of: solid rim, ticks pointing inward all round. */
export function keepOutCircle(at: XY, r: number, { rim, fill, width = 2, ref }: Rim): Item {
  const [x, y] = at;
  const count = Math.max(12, Math.round((2 * Math.PI * r) / 11.5));
  const tick = Math.min(8, Math.max(4, r * 0.18));
  const ticks = Array.from({ length: count }, (_, index) => {
    const angle = (index * 2 * Math.PI) / count;
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
    return [
      ["M", x + r * sin, y - r * cos],
      ["L", x + (r - tick) * sin, y - (r - tick) * cos],
    ] as const;
  });
  return group(
    [
      circle(at, r, { fill: fill ?? "none", stroke: rim, width }),
      path(ticks.flat(), { fill: "none", stroke: rim, width: width * 0.75, cap: "butt" }),
    ],
    { class: "ns-keep-out", ...(ref === undefined ? {} : { ref }) },
  );
}

/** A hung-up limb: a forked branch, and the way it may fall. `s` is the height of the sign. */
export function limbSymbol([x, y]: XY, s: number): Item {
  const at = (u: number, v: number): XY => [x + u * s, y + v * s];
  const ink = { stroke: "ink", width: s * 0.1 } as const;
  return group(
    [
      line([at(-0.42, -0.16), at(0.36, -0.36)], ink),
      line([at(-0.1, -0.24), at(-0.3, -0.44)], ink),
      line([at(0.1, -0.29), at(0.24, -0.1)], ink),
      line([at(0, -0.04), at(0, 0.46)], ink),
      line([at(-0.18, 0.27), at(0, 0.47), at(0.18, 0.27)], ink),
    ],
    { class: "ns-limb" },
  );
}

/** Three crossed logs. */
export function fireSymbol([x, y]: XY, s: number): Item {
  const logs = [-0.35, 0.7, 1.75].map((angle) => {
    const [dx, dy] = [(Math.cos(angle) * s) / 2, (Math.sin(angle) * s) / 2];
    const points: readonly XY[] = [
      [x - dx, y - dy],
      [x + dx, y + dy],
    ];
    return [
      line(points, { stroke: "ink", width: s * 0.24 }),
      line(points, { stroke: "wood", width: s * 0.1 }),
    ];
  });
  return group(logs.flat(), { class: "ns-fire" });
}

/** A pair that will not do: the line cut in the middle, its cut ends turned down. */
export function refusedPair(from: XY, to: XY): Item {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const turnRad = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const hook = Math.min(9, length * 0.14);
  const gap = 2.5;
  const middle = length / 2;
  const paint = { fill: "none", stroke: "no", width: 2 } as const;
  const upright = Math.cos(turnRad) < 0 ? -1 : 1;
  return group(
    [
      path(
        [
          ["M", 10, 0],
          ["L", middle - gap - hook, 0],
          ["Q", middle - gap, 0, middle - gap, hook * upright],
        ],
        paint,
      ),
      path(
        [
          ["M", length - 10, 0],
          ["L", middle + gap + hook, 0],
          ["Q", middle + gap, 0, middle + gap, hook * upright],
        ],
        paint,
      ),
    ],
    { class: "ns-refused", move: from, turnRad },
  );
}
