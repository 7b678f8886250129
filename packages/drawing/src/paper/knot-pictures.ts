import type { Item, PathStep, XY } from "../scene/scene.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { name } from "../scene/names.ts";
import { group, path, stroke, text } from "../scene/shapes.ts";

/** The knots that a berth needs, each where it is tied. */
export type Knot = "strap-through-eye" | "slipped-half-hitch" | "sling-bury" | "friction-loop" | "sheet-bend";

/** Room of a picture at scale 1 [mm]. */
export const KNOT_SIZE = { width: 60, height: 40 } as const;

const THICK = 3.2;
const EDGE = 0.45;
const GAP = 0.7;

/** A knot as cords that lie on one another in the order they are drawn: what comes later crosses over. */
export function knotPicture(knot: Knot, at: XY, scale: number): Item {
  const numbers = (STEPS[knot] ?? []).map(([x, y], index) =>
    text(name(String(index + 1)), [x, y], {
      size: TYPE_MM.note / scale,
      weight: 700,
      anchor: "middle",
      halo: "paper",
    }),
  );
  return group([...PICTURES[knot](), ...numbers], {
    move: at,
    scale,
    class: `ns-knot-picture ns-${knot}`,
  });
}

/** Where the numbered steps of its words are seen in a picture. */
const STEPS: Readonly<Partial<Record<Knot, readonly XY[]>>> = {
  "slipped-half-hitch": [
    [9, 31],
    [40, 30],
    [3, 7],
  ],
  "sheet-bend": [
    [13, 30],
    [54, 23],
    [20, 6],
  ],
};

interface CordStyle {
  readonly thick?: number;
  /** Closed, rounded ends: a turn that goes on behind. */
  readonly round?: true;
}

/** A cord through the places: two edges, and a gap to whatever it crosses. */
function cord(places: readonly XY[], { thick = THICK, round }: CordStyle = {}): Item[] {
  const steps: PathStep[] = places.map(([x, y], index) => [index === 0 ? "M" : "L", x, y]);
  const laid = { fill: "none", join: "round", cap: round === true ? "round" : "butt" } as const;
  return [
    path(steps, { ...laid, cap: "butt", stroke: "paper", width: thick + 2 * GAP }),
    path(steps, { ...laid, stroke: "ink", width: thick }),
    path(steps, { ...laid, stroke: "paper", width: thick - 2 * EDGE }),
  ];
}

/** A smooth strand through the places (Catmull and Rom's curve), so many points between two of them. */
function strand(places: readonly XY[]): XY[] {
  const at = (index: number): XY => places[Math.max(0, Math.min(places.length - 1, index))] ?? [0, 0];
  return places.slice(1).flatMap((_, index) => {
    const four = [at(index - 1), at(index), at(index + 1), at(index + 2)] as const;
    const points = Array.from({ length: PARTS }, (__, part) => between(four, part / PARTS));
    return index === places.length - 2 ? [...points, at(index + 1)] : points;
  });
}

const PARTS = 8;

function between([a, b, c, d]: readonly [XY, XY, XY, XY], t: number): XY {
  const along = (axis: 0 | 1): number =>
    0.5 *
    (2 * b[axis] +
      (c[axis] - a[axis]) * t +
      (2 * a[axis] - 5 * b[axis] + 4 * c[axis] - d[axis]) * t * t +
      (3 * b[axis] - a[axis] - 3 * c[axis] + d[axis]) * t * t * t);
  return [along(0), along(1)];
}

/** The part of a strand between two of the places it was led through, laid over what was drawn before. */
function over(points: readonly XY[], from: number, to: number, style: CordStyle = {}): Item[] {
  return cord(points.slice(from * PARTS, to * PARTS + 1), style);
}

/** The free end of a cord, cut across. */
function end(at: XY, turnRad: number): Item {
  const [dx, dy] = [(Math.sin(turnRad) * THICK) / 2, (-Math.cos(turnRad) * THICK) / 2];
  return stroke([at[0] - dx, at[1] - dy, at[0] + dx, at[1] + dy], {
    stroke: "ink",
    width: EDGE,
    cap: "butt",
  });
}

const PICTURES: Readonly<Record<Knot, () => Item[]>> = {
  "strap-through-eye": strapThroughEye,
  "slipped-half-hitch": slippedHalfHitch,
  "sling-bury": slingBury,
  "friction-loop": frictionLoop,
  "sheet-bend": sheetBend,
};

/** Round the trunk, through the strap's own eye, and back towards the hammock. */
function strapThroughEye(): Item[] {
  const bark = { stroke: "ink", width: 0.7, cap: "butt" } as const;
  const eye = strand([
    [12, 20],
    [20, 20],
    [25, 16],
    [30, 15.4],
    [33.4, 20],
    [30, 24.6],
    [25, 24],
    [20, 20],
  ]);
  const led = strand([
    [44, 16.6],
    [36, 16.8],
    [29.6, 18],
    [28, 20],
    [30, 22],
    [37, 24],
    [58, 28],
  ]);
  return [
    stroke([12, 0, 12, 40], bark),
    stroke([44, 0, 44, 40], bark),
    // The far rim of the eye lies under the strap that comes through it, the near one over its fold.
    ...over(eye, 1, 7, { thick: 2.6 }),
    ...cord(led),
    ...over(eye, 1, 3, { thick: 2.6 }),
    ...over(eye, 0, 1),
  ];
}

/** Over the strap, behind it, and a bight under its own part: one pull frees it. */
function slippedHalfHitch(): Item[] {
  const led = strand([
    [13.4, 1],
    [15, 8],
    [16.4, 16],
    [17, 24],
    [20, 31],
    [25.6, 31],
    [31, 26],
    [33.6, 18],
    [32.6, 9.6],
    [26, 6.6],
    [16, 8],
    [7, 11],
    [4, 15],
    [8, 16.4],
    [18, 13],
    [30, 12.6],
    [40, 13.4],
    [52, 9],
  ]);
  return [
    // Behind the strap, upward.
    ...over(led, 5, 8),
    ...cord([
      [1, 21],
      [59, 21],
    ]),
    // The bight, under the part that comes in.
    ...over(led, 8, 17, { thick: 2.8 }),
    end([52, 9], -0.4),
    ...over(led, 0, 6),
  ];
}

/** The line runs back inside itself along the thick part; its tail comes out and is knotted, the loop is what is left. */
function slingBury(): Item[] {
  const thin = { thick: 2.6 } as const;
  const eye = strand([
    [12, 20],
    [8, 16.6],
    [3, 17],
    [1.4, 20],
    [3, 23],
    [8, 23.4],
    [12, 20],
  ]);
  const loop = strand([
    [36, 19],
    [44, 15.6],
    [52, 14.6],
    [57, 17],
    [58, 20],
    [57, 23],
    [52, 25.4],
    [44, 24.4],
    [36, 21],
  ]);
  const tail = strand([
    [22, 20.6],
    [18.6, 24],
    [17, 30],
    [16.6, 34],
  ]);
  return [
    ...cord(eye, thin),
    ...cord(tail, thin),
    ...cord(loop, thin),
    ...cord(
      [
        [11.6, 20],
        [22, 20],
      ],
      thin,
    ),
    ...cord(
      [
        [20, 20],
        [38, 20],
      ],
      { thick: 5.6 },
    ),
    // What lies inside the thick part, and the knot that keeps the tail out of it.
    stroke([21, 20, 37, 20], { stroke: "ink", width: 0.35, dash: [1.2, 0.9], cap: "butt" }),
    ...cord(
      [
        [14.8, 34.6],
        [18.4, 34.6],
      ],
      { thick: 3.6, round: true },
    ),
  ];
}

/** A loop wound three times over the line and through itself: it slides by hand and grips under load. */
function frictionLoop(): Item[] {
  const turns = [13, 17.2, 21.4, 34.6, 38.8, 43];
  const leg = (top: number, foot: number): Item[] =>
    cord(
      strand([
        [top, 14],
        [top, 26],
        [foot, 40],
      ]),
      { thick: 2.8 },
    );
  const bridge = strand([
    [12.4, 21],
    [14, 26.6],
    [22, 29],
    [28, 29.4],
    [34, 29],
    [42, 26.6],
    [43.6, 21],
  ]);
  return [
    ...leg(26, 25),
    ...leg(30, 31),
    ...cord([
      [1, 15],
      [59, 15],
    ]),
    ...cord(bridge, { thick: 2.8 }),
    ...turns.flatMap((x) =>
      cord(
        [
          [x + 1, 10.6],
          [x - 1, 19.4],
        ],
        { thick: 3.4, round: true },
      ),
    ),
  ];
}

/** A line joined to a loop: up through it, behind both its legs, under its own part. */
function sheetBend(): Item[] {
  const led = strand([
    [1, 21],
    [14, 21],
    [24, 21],
    [31, 20],
    [36, 15],
    [39, 8],
    [43, 4.6],
    [46.6, 10],
    [47, 20],
    [46, 29],
    [42, 35],
    [36.6, 32],
    [33, 25],
    [30.6, 16],
    [27, 1],
  ]);
  return [
    // In from the left, under the loop's bend; and behind both its legs.
    ...over(led, 0, 3, { thick: 2.8 }),
    ...over(led, 6, 10, { thick: 2.8 }),
    ...cord([
      ...strand([
        [59, 12],
        [36, 12],
        [26, 13],
        [20.6, 17],
        [20.6, 23],
        [26, 27],
        [36, 28],
        [59, 28],
      ]),
    ]),
    // The end: over one leg, under its own part, over the other.
    ...over(led, 10, 14, { thick: 2.8 }),
    end([27, 1], -1.8),
    // Out of the loop, over the end and over the upper leg.
    ...over(led, 2, 6, { thick: 2.8 }),
  ];
}
