import type { BerthTarp, DripLine, Guy, Point2, Point3 } from "@nightspan/core";
import { LINE } from "../colour/tokens.ts";
import type { Item, XY } from "../scene/scene.ts";
import { circle, group, line, path, polygon } from "../scene/shapes.ts";

/** Turns a place of the berth into one on the paper. */
export type ToPaper = (place: Point2) => XY;

/** Tarp, guys and pegs as seen from above: dashed edges, thin lines to open triangles. */
export function tarpAbove({ panels, guys }: BerthTarp, toPaper: ToPaper, fill: "none" | "panel"): Item {
  return group(
    [
      ...panels.map(({ corners }) =>
        polygon(
          corners.map((corner) => toPaper(flat(corner))),
          {
            fill,
            stroke: "ink",
            width: LINE.tarp,
            dash: [9, 4.5],
            cap: "butt",
          },
        ),
      ),
      ...ridgeEdge(panels, toPaper),
      ...guys.map((guy) => guyAbove(guy, toPaper)),
    ],
    { class: "ns-tarp" },
  );
}

function flat([x, y]: Point3): Point2 {
  return [x, y];
}

/** The ridge, which both sides share: drawn whole over the dashes. */
function ridgeEdge(panels: BerthTarp["panels"], toPaper: ToPaper): Item[] {
  const ends = panels
    .filter(({ name }) => name === "left" || name === "right")
    .slice(0, 1)
    .flatMap(({ corners }) => corners.slice(0, 2));
  const [from, to] = ends;
  if (from === undefined || to === undefined) return [];
  return [line([toPaper(flat(from)), toPaper(flat(to))], { stroke: "ink", width: LINE.guy })];
}

/** A guy to its peg; one that runs into something is cut in the middle, like a pair that will not do. */
function guyAbove({ from, peg, conflicts, name }: Guy, toPaper: ToPaper): Item {
  const [start, end] = [toPaper(flat(from)), toPaper(flat(peg))];
  const bad = conflicts.length > 0;
  const ink = { stroke: bad ? "no" : "ink", width: bad ? 2.25 : LINE.guy } as const;
  const at = (share: number): XY => [
    start[0] + (end[0] - start[0]) * share,
    start[1] + (end[1] - start[1]) * share,
  ];
  const lines = bad
    ? [line([start, at(0.38)], ink), line([at(0.62), end], ink), cross(at(0.5))]
    : [line([start, end], ink)];
  return group([...lines, pegMark(end, Math.atan2(end[1] - start[1], end[0] - start[0]))], {
    class: bad ? "ns-guy ns-guy-conflict" : "ns-guy",
    ref: `guy/${name}`,
  });
}

function cross([x, y]: XY): Item {
  return path(
    [
      ["M", x - 5, y - 5],
      ["L", x + 5, y + 5],
      ["M", x - 5, y + 5],
      ["L", x + 5, y - 5],
    ],
    { fill: "none", stroke: "no", width: 2.25 },
  );
}

/** An open triangle whose tip takes the line. */
export function pegMark([x, y]: XY, away: number, size = 9): Item {
  const corner = (turn: number): XY => [x + size * Math.cos(away + turn), y + size * Math.sin(away + turn)];
  return polygon([[x, y], corner(0.55), corner(-0.55)], {
    fill: "paper",
    stroke: "ink",
    width: LINE.guy,
    join: "miter",
    class: "ns-peg",
  });
}

/** A string tied round the strap: a bar across it and the drop that leaves it. */
export function dripAbove(at: XY): Item {
  const [x, y] = at;
  return group(
    [
      line(
        [
          [x, y - 7],
          [x, y + 7],
        ],
        { stroke: "ink", width: 2, cap: "butt" },
      ),
      drop([x, y + 12]),
    ],
    { class: "ns-drip-line" },
  );
}

/** A drop, its point up. */
export function drop([x, y]: XY, size = 3.4): Item {
  return group(
    [
      path(
        [
          ["M", x, y - size * 1.9],
          ["L", x + size * 0.86, y - size * 0.5],
          ["L", x - size * 0.86, y - size * 0.5],
          ["Z"],
        ],
        {
          fill: "ink",
        },
      ),
      circle([x, y], size, { fill: "ink" }),
    ],
    { class: "ns-drop" },
  );
}

/** Where the drip line sits between gather and bark, as a share of the way outward. */
export function dripShare({ fromGatherM }: DripLine, strapM: number): number {
  return strapM <= 0 ? 0 : Math.min(1, Math.max(0, fromGatherM / strapM));
}
