import { findSelfCrossing, type GroundXY, type Refusal } from "@nightspan/core";
import { field, listAt, numberAt, textAt, textsAt } from "./raw.ts";
import { twice } from "./twice.ts";

/** Faults between the fields of the ground: trees, stated pairs and obstacles. */
export function groundChecks(document: unknown): readonly Refusal[] {
  const ground = field(document, "ground");
  const trees = listAt(ground, "trees");
  const pairs = listAt(ground, "pairs");
  const obstacles = listAt(ground, "obstacles");
  const duplicates = twice(trees, "ground.trees", "id");
  return [
    ...duplicates,
    ...(duplicates.length > 0 ? [] : twice(trees, "ground.trees", "tag", "id")),
    ...trees.flatMap((tree, index) => trunkFaults(tree, `ground.trees[${index}]`)),
    ...twice(pairs, "ground.pairs", "id"),
    ...pairChecks(pairs, document),
    ...twice(obstacles, "ground.obstacles", "id"),
    ...obstacles.flatMap((obstacle, index) => shapeFaults(obstacle, `ground.obstacles[${index}]`)),
  ];
}

/** Diameter and girth of one trunk may differ by this much and still be one measurement. */
const GIRTH_SLACK = 0.03;

/** What is wrong between a row's dbh_cm and girth_cm; one of them is needed. */
export function trunkFaults(tree: unknown, at: string): readonly Refusal[] {
  if (typeof tree !== "object" || tree === null) return [];
  const [dbh, girth] = [numberAt(tree, "dbh_cm"), numberAt(tree, "girth_cm")];
  if (field(tree, "dbh_cm") === undefined && field(tree, "girth_cm") === undefined) {
    return [
      { field: `${at}.dbh_cm`, got: undefined, need: "dbh_cm, the trunk's diameter, or girth_cm, round it" },
    ];
  }
  if (dbh === undefined || girth === undefined) return [];
  const across = girth / Math.PI;
  if (Math.abs(across - dbh) <= GIRTH_SLACK * Math.max(across, dbh)) return [];
  const need = `girth_cm ÷ π, which is ${across.toFixed(1)} cm, or dbh_cm and girth_cm within 3 % of each other`;
  return [{ field: `${at}.dbh_cm`, got: dbh, need }];
}

function pairChecks(pairs: readonly unknown[], document: unknown): readonly Refusal[] {
  const ids = new Set(pairs.flatMap((pair) => textAt(pair, "id") ?? []));
  const sleepers = new Set(listAt(document, "sleepers").flatMap((sleeper) => textAt(sleeper, "id") ?? []));
  return pairs.flatMap((pair, index) => {
    const at = `ground.pairs[${index}]`;
    return [...spanFaults(pair, at), ...namesFaults(pair, at, ids), ...stepperFaults(pair, at, sleepers)];
  });
}

function spanFaults(pair: unknown, at: string): readonly Refusal[] {
  if (typeof pair !== "object" || pair === null) return [];
  const [span, steps] = [field(pair, "span_m"), field(pair, "steps")];
  if (span === undefined && steps === undefined) {
    return [{ field: `${at}.span_m`, got: undefined, need: "span_m, in metres, or steps" }];
  }
  if (span === undefined || steps === undefined) return [];
  return [{ field: `${at}.steps`, got: steps, need: "span_m or steps, not both" }];
}

function namesFaults(pair: unknown, at: string, ids: ReadonlySet<string>): readonly Refusal[] {
  const faults: Refusal[] = [];
  const [one, other] = textsAt(pair, "trees");
  if (one !== undefined && one === other) {
    faults.push({ field: `${at}.trees`, got: [one, other], need: "two different trees" });
  }
  textsAt(pair, "too_near").forEach((name, index) => {
    const itself = name === textAt(pair, "id");
    if (ids.has(name) && !itself) return;
    const need = itself ? "another pair's id" : "the id of a pair in ground.pairs";
    faults.push({ field: `${at}.too_near[${index}]`, got: name, need });
  });
  return faults;
}

function stepperFaults(pair: unknown, at: string, sleepers: ReadonlySet<string>): readonly Refusal[] {
  const by = textAt(pair, "stepped_by");
  if (by === undefined || sleepers.has(by)) return [];
  return [{ field: `${at}.stepped_by`, got: by, need: "the id of a sleeper" }];
}

function shapeFaults(obstacle: unknown, at: string): readonly Refusal[] {
  const shape = field(obstacle, "shape");
  const type = textAt(shape, "type");
  if (textAt(obstacle, "kind") === "overhead" && type !== undefined && type !== "Point") {
    return [
      {
        field: `${at}.shape.type`,
        got: type,
        need: '"Point": under what hangs, with setback_m as its reach',
      },
    ];
  }
  if (type !== "Polygon") return [];
  const ring = listAt(shape, "coordinates").flatMap((points) =>
    Array.isArray(points) ? [pointsOf(points)] : [],
  )[0];
  return ring === undefined ? [] : ringFaults(ring, `${at}.shape.coordinates[0]`);
}

function ringFaults(ring: readonly GroundXY[], at: string): readonly Refusal[] {
  const [first, last] = [ring[0], ring.at(-1)];
  if (first === undefined || last === undefined || ring.length < 4) return [];
  if (first[0] !== last[0] || first[1] !== last[1]) {
    return [{ field: at, got: last, need: `the first point again at the end, ${JSON.stringify(first)}` }];
  }
  const crossing = findSelfCrossing(ring.slice(0, -1));
  if (crossing === undefined) return [];
  const [one, other] = crossing;
  return [
    {
      field: at,
      got: `sides ${one + 1} and ${other + 1} cross`,
      need: "an outline that does not cross itself",
    },
  ];
}

function pointsOf(points: readonly unknown[]): readonly GroundXY[] {
  return points.flatMap((point): readonly GroundXY[] => {
    if (!Array.isArray(point)) return [];
    const coordinates: readonly unknown[] = point;
    const [x, y] = coordinates;
    return typeof x === "number" && typeof y === "number" ? [[x, y]] : [];
  });
}
