import type { Camp, StatedPair } from "@nightspan/core";
import type { XY } from "../scene/scene.ts";
import type { MapTree } from "./map-tree.ts";
import { lookedAtOnTheDay } from "./tree-state.ts";

export interface SketchGround {
  readonly trees: readonly MapTree[];
  readonly northKnown: boolean;
}

type Cluster = Map<string, XY>;

/**
 * Stated pairs laid out for the eye: each pair by its bearing and span, pairs that share a tree hang
 * together, and the clusters stand in rows. A pair of unknown bearing lies west to east.
 */
export function sketchGround(camp: Camp): SketchGround {
  const pairs = camp.ground?.pairs ?? [];
  const places = inRows(clusters(pairs));
  const facts = new Map<string, Omit<MapTree, "at" | "id" | "tag">>();
  for (const pair of pairs) {
    const state = lookedAtOnTheDay(pair.lookedAt, camp) ? "looked-at" : "not-looked-at";
    pair.trees.forEach((tree, end) => facts.set(tree, { dbhM: pair.dbhM[end] ?? 0, state }));
  }
  const trees = Array.from(places, ([id, at]): MapTree => {
    return { id, tag: id, at, ...(facts.get(id) ?? { dbhM: 0, state: "not-looked-at" }) };
  });
  return { trees, northKnown: pairs.every(({ bearingRad }) => bearingRad !== undefined) };
}

function clusters(pairs: readonly StatedPair[]): Cluster[] {
  const found: Cluster[] = [];
  const left = [...pairs];
  while (left.length > 0) {
    const cluster: Cluster = new Map();
    let next: number;
    do {
      next = cluster.size === 0 ? 0 : left.findIndex(({ trees }) => trees.some((tree) => cluster.has(tree)));
      const [pair] = next < 0 ? [] : left.splice(next, 1);
      if (pair !== undefined) place(pair, cluster);
    } while (next >= 0 && left.length > 0);
    found.push(cluster);
  }
  return found;
}

function place({ trees: [first, second], spanM, bearingRad }: StatedPair, cluster: Cluster): void {
  const bearing = bearingRad ?? Math.PI / 2;
  const [east, north] = [Math.sin(bearing) * spanM, Math.cos(bearing) * spanM];
  const [a, b] = [cluster.get(first), cluster.get(second)];
  if (a === undefined && b !== undefined) cluster.set(first, [b[0] - east, b[1] - north]);
  const from = cluster.get(first) ?? [0, 0];
  cluster.set(first, from);
  if (b === undefined) cluster.set(second, [from[0] + east, from[1] + north]);
}

/** Clusters side by side, as many to a row as keep the sheet about as wide as high. */
function inRows(all: readonly Cluster[]): Map<string, XY> {
  const columns = Math.ceil(Math.sqrt(all.length));
  const placed = new Map<string, XY>();
  let [x, y, rowHeight] = [0, 0, 0];
  all.forEach((cluster, index) => {
    const points = [...cluster.values()];
    const [left, right] = extent(points.map(([east]) => east));
    const [low, high] = extent(points.map(([, north]) => north));
    for (const [id, [east, north]] of cluster) placed.set(id, [x + east - left, y + north - high]);
    x += right - left + GAP_M;
    rowHeight = Math.max(rowHeight, high - low);
    if ((index + 1) % columns === 0) [x, y, rowHeight] = [0, y - rowHeight - GAP_M, 0];
  });
  return placed;
}

function extent(values: readonly number[]): readonly [number, number] {
  return [Math.min(...values), Math.max(...values)];
}

/** Free ground drawn between pairs [m]. */
const GAP_M = 3.2;
