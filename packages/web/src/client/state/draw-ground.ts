import type { CampDocument } from "@nightspan/edge";
import { writeAt } from "./document-path.ts";

/** A place on the ground [m], east and north. */
export type Place = readonly [xM: number, yM: number];

/** What can be drawn: a tree, one thing to keep clear of, or a place where people meet. */
export type Drawn = "tree" | ObstacleDrawn | SpotDrawn;
export type ObstacleDrawn = (typeof OBSTACLES)[number];
export type SpotDrawn = (typeof SPOTS)[number];

export const OBSTACLES = ["fire", "overhead", "path", "water", "building"] as const;
export const SPOTS = ["meeting_point", "muster", "fallback"] as const;

/** How many presses a thing needs at least: a tree one, a way two, an outline three. */
export const LEAST_PLACES: Readonly<Record<Drawn, number>> = {
  tree: 1,
  fire: 1,
  overhead: 1,
  path: 2,
  water: 2,
  building: 3,
  meeting_point: 1,
  muster: 1,
  fallback: 1,
};

/** What is known of a new tree besides its place. */
export interface NewTree {
  /** As typed; the file refuses what is no girth. */
  readonly girthCm: unknown;
  readonly species?: string;
  readonly condition?: "healthy" | "doubtful" | "dead";
}

/** A camp file with one more thing on its ground; whatever else stands in it stays as it is. */
export function withDrawn(
  document: CampDocument,
  what: Drawn,
  places: readonly Place[],
  more: { readonly tree: NewTree; readonly reachM?: unknown },
): unknown {
  const [first] = places.map(rounded);
  if (first === undefined) return document;
  if (what === "tree") return withTree(document, first, more.tree);
  if (isSpot(what)) return withSpot(document, what, first);
  const obstacles = document.ground?.obstacles ?? [];
  const obstacle = {
    id: freeId(what, obstacles),
    kind: what,
    shape: shapeOf(what, places.map(rounded)),
    ...(more.reachM === undefined ? {} : { setback_m: more.reachM }),
  };
  return writeAt(document, ["ground", "obstacles", obstacles.length], obstacle);
}

/** A camp file with a tree elsewhere. */
export function withTreeAt(document: CampDocument, id: string, place: Place): unknown {
  const index = (document.ground?.trees ?? []).findIndex((tree) => tree.id === id);
  if (index < 0) return document;
  const [x, y] = rounded(place);
  const moved = writeAt(document, ["ground", "trees", index, "x_m"], x);
  return writeAt(moved, ["ground", "trees", index, "y_m"], y);
}

/** A camp file without a tree; a list that would be left empty goes with it. */
export function withoutTree(document: CampDocument, id: string): unknown {
  return without(document, "trees", id);
}

/** A camp file without one thing to keep clear of. */
export function withoutObstacle(document: CampDocument, id: string): unknown {
  return without(document, "obstacles", id);
}

/** The place so many metres from another, on a bearing from grid north, clockwise [degrees]. */
export function placeFrom([x, y]: Place, awayM: number, bearingDeg: number): Place {
  const turn = (bearingDeg * Math.PI) / 180;
  return rounded([x + awayM * Math.sin(turn), y + awayM * Math.cos(turn)]);
}

function without(document: CampDocument, list: "trees" | "obstacles", id: string): unknown {
  const items: readonly { readonly id: string }[] = document.ground?.[list] ?? [];
  const index = items.findIndex((one) => one.id === id);
  if (index < 0) return document;
  return items.length === 1
    ? writeAt(document, ["ground", list], undefined)
    : writeAt(document, ["ground", list, index], undefined);
}

function withTree(document: CampDocument, [x, y]: Place, tree: NewTree): unknown {
  const trees = document.ground?.trees ?? [];
  return writeAt(document, ["ground", "trees", trees.length], {
    id: freeId("T", trees),
    x_m: x,
    y_m: y,
    girth_cm: tree.girthCm,
    ...(tree.species === undefined ? {} : { species: tree.species }),
    ...(tree.condition === undefined ? {} : { condition: tree.condition }),
  });
}

/** A place in words keeps its words as a note. */
function withSpot(document: CampDocument, what: SpotDrawn, [x, y]: Place): unknown {
  const before = document.ground?.[what];
  const kept = typeof before === "string" ? { note: before } : (before ?? {});
  return writeAt(document, ["ground", what], { ...kept, x_m: x, y_m: y });
}

function shapeOf(what: ObstacleDrawn, places: readonly Place[]): unknown {
  if (what === "building") return { type: "Polygon", coordinates: [[...places, ...places.slice(0, 1)]] };
  if (what === "path" || what === "water") return { type: "LineString", coordinates: places };
  return { type: "Point", coordinates: places[0] };
}

function isSpot(what: Drawn): what is SpotDrawn {
  return SPOTS.some((spot) => spot === what);
}

function freeId(
  stem: string,
  taken: readonly { readonly id: string; readonly tag?: string | undefined }[],
): string {
  const used = new Set(taken.flatMap(({ id, tag }) => [id, tag]));
  let n = taken.length + 1;
  while (used.has(`${stem}${n}`)) n += 1;
  return `${stem}${n}`;
}

/** To the centimetre: nobody measures a wood more finely. */
function rounded([x, y]: Place): Place {
  return [Math.round(x * 100) / 100, Math.round(y * 100) / 100];
}
