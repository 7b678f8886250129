import type { Item, XY } from "../scene/scene.ts";
import { circle, group, line, path, polygon } from "../scene/shapes.ts";
import type { MapTree } from "./map-tree.ts";
import type { TreeState } from "./tree-state.ts";

/** Least radius of a stem that may carry somebody [px]. */
const LEAST_R = 3.5;
/** Stems under the least trunk are dots [px]. */
const THIN_R = 2;
const NEEDED_R = 12;

/** The radius a stem is drawn with: to scale, never under what the eye finds [px]. */
export function stemRadius(state: TreeState, dbhM: number, pxPerM: number): number {
  if (state === "thin") return THIN_R;
  const least = state === "looked-at" ? LEAST_R : LEAST_R + 2;
  return Math.max(least, (dbhM * pxPerM) / 2);
}

/** One stem by what is known of it: the more is known, the more ink. */
export function treeSymbol(state: TreeState, at: XY, r: number, ref?: string): Item {
  const marks = { class: `ns-tree ns-tree-${state}`, ...(ref === undefined ? {} : { ref }) };
  switch (state) {
    case "looked-at":
    case "thin":
      return circle(at, r, { ...marks, fill: "ink" });
    case "not-looked-at":
      return circle(at, r, {
        ...marks,
        fill: "paper",
        stroke: "ink",
        width: 2,
        dash: [2.6, 2.6],
        cap: "butt",
      });
    case "doubtful":
      return group(half(at, r), marks);
    case "barred":
      return group(barred(at, r), marks);
    case "dead":
      return group(burst(at, Math.max(r, 9)), marks);
  }
}

/** A stem a berth needs and nobody has looked at: a disc that calls, the open ring on it. */
export function neededSymbol(at: XY, r: number, ref?: string): Item {
  const marks = { class: "ns-tree ns-tree-needed", ...(ref === undefined ? {} : { ref }) };
  return group(
    [
      circle(at, neededRadius(r), { fill: "look", stroke: "ink", width: 2 }),
      circle(at, r, { fill: "paper", stroke: "ink", width: 2, dash: [2.6, 2.6], cap: "butt" }),
    ],
    marks,
  );
}

/** The radius of the disc under such a stem [px]. */
export function neededRadius(r: number): number {
  return Math.max(NEEDED_R, r + 6);
}

/** Stems in as few groups as there are states; the group carries the ink. */
export function stems(trees: readonly (MapTree & { readonly px: XY; readonly r: number })[]): Item[] {
  const plain = (state: TreeState): Item => {
    const circles = trees
      .filter((tree) => tree.state === state)
      .map(({ id, px, r }) => circle(px, r, { ref: `tree/${id}` }));
    return group(circles, { class: `ns-trees ns-tree-${state}`, ...STEM_INK[state] });
  };
  const drawn = trees.filter(({ state }) => state in SHAPED);
  return [
    plain("thin"),
    plain("not-looked-at"),
    plain("looked-at"),
    ...drawn.map(({ state, px, r, id }) => treeSymbol(state, px, r, `tree/${id}`)),
  ];
}

const SHAPED: Partial<Record<TreeState, true>> = { doubtful: true, dead: true, barred: true };

const STEM_INK: Partial<Record<TreeState, object>> = {
  thin: { fill: "ink" },
  "looked-at": { fill: "ink" },
  "not-looked-at": { fill: "paper", stroke: "ink", width: 2, dash: [2.6, 2.6], cap: "butt" },
};

function half([x, y]: XY, r: number): Item[] {
  return [
    circle([x, y], r, { fill: "paper", stroke: "ink", width: 1.75 }),
    path([["M", x - r, y], ["A", r, 0, 0, x + r, y], ["Z"]], { fill: "ink" }),
  ];
}

function barred([x, y]: XY, r: number): Item[] {
  return [
    circle([x, y], r, { fill: "paper", stroke: "ink", width: 1.75 }),
    line(
      [
        [x - r * 1.9, y],
        [x + r * 1.9, y],
      ],
      { stroke: "ink", width: 2, cap: "butt" },
    ),
  ];
}

function burst([x, y]: XY, r: number): Item[] {
  const points = Array.from({ length: 16 }, (_, index): XY => {
    const reach = index % 2 === 0 ? r : r * 0.66;
    const angle = (index * Math.PI) / 8;
    return [x + reach * Math.sin(angle), y - reach * Math.cos(angle)];
  });
  const c = r * 0.3;
  const ink = { stroke: "ink", width: 2 } as const;
  return [
    polygon(points, { fill: "paper", stroke: "ink", width: 1.5, join: "miter" }),
    line(
      [
        [x - c, y - c],
        [x + c, y + c],
      ],
      ink,
    ),
    line(
      [
        [x - c, y + c],
        [x + c, y - c],
      ],
      ink,
    ),
  ];
}
