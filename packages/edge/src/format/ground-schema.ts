import * as z from "zod/mini";
import { choice, day, flag, list, number, record, text, whole } from "./fields.ts";

export const id = () => text("an id");

export const lookedAt = () => record("by whom and on which day", { by: text("a name"), on: day() });

const coordinate = () => number(-100_000, 100_000, "m");
const elevation = () => number(-500, 9_000, "m");

/** What is known of a tree's health. */
function condition() {
  return choice("not-looked-at", "healthy", "doubtful", "dead");
}

export const treeSchema = record("a tree", {
  id: id(),
  x_m: coordinate(),
  y_m: coordinate(),
  dbh_cm: z.optional(number(1, 1_000, "cm")),
  girth_cm: z.optional(number(3, 3_200, "cm")),
  species: z.optional(text("a species")),
  condition: z.optional(condition()),
  looked_at: z.optional(lookedAt()),
  height_m: z.optional(number(1, 130, "m")),
  elevation_m: z.optional(elevation()),
  lean_deg: z.optional(number(0, 60, "degrees")),
  tag: z.optional(text("a tag", 40)),
  use: z.optional(flag()),
});

export const pairSchema = record("a stated pair of trees", {
  id: id(),
  trees: z
    .tuple([text("a tag", 40), text("a tag", 40)], { error: "two tags" })
    .check(z.describe("the tags of the two trees")),
  span_m: z.optional(number(0.5, 30, "m")),
  steps: z.optional(number(0.5, 100, "steps")),
  stepped_by: z.optional(id()),
  bearing_deg: z.optional(number(0, 360, "degrees")),
  fall_m: z.optional(number(-10, 10, "m")),
  dbh_cm: z.optional(
    z.tuple([number(1, 1_000, "cm"), number(1, 1_000, "cm")], { error: "two numbers, in cm" }),
  ),
  looked_at: z.optional(lookedAt()),
  conditions: z.optional(z.tuple([condition(), condition()], { error: "the conditions of the two trees" })),
  use: z.optional(flag()),
  too_near: z.optional(list(id(), "pair ids")),
});

const point = () =>
  z.tuple([coordinate(), coordinate()], z.optional(elevation()), {
    error: "a point: [x, y] in local metres",
  });

const shapeSchema = z.discriminatedUnion(
  "type",
  [
    record("a point", { type: z.literal("Point"), coordinates: point() }),
    record("a line", { type: z.literal("LineString"), coordinates: list(point(), "points", 2) }),
    record("an area", {
      type: z.literal("Polygon"),
      coordinates: list(list(point(), "points", 4, 2_000), "ring (no holes)", 1, 1),
    }),
  ],
  { error: 'a GeoJSON geometry in local metres: "Point", "LineString" or "Polygon"' },
);

export const obstacleSchema = record("an obstacle", {
  id: id(),
  kind: choice("fire", "path", "water", "building", "rock", "overhead", "other"),
  shape: shapeSchema,
  setback_m: z.optional(number(0, 200, "m")),
});

const spot = () =>
  z.union(
    [
      text("a place in words"),
      record("a spot", {
        x_m: z.optional(coordinate()),
        y_m: z.optional(coordinate()),
        note: z.optional(text("a place in words")),
      }),
    ],
    { error: "a place in words, or an object of x_m, y_m and note" },
  );

export const groundSchema = record("the ground", {
  trees: z.optional(list(treeSchema, "trees", 1, 10_000)),
  pairs: z.optional(list(pairSchema, "pairs", 1, 10_000)),
  obstacles: z.optional(list(obstacleSchema, "obstacles")),
  slope: z.optional(
    record("rise_ratio and downhill_deg", {
      rise_ratio: number(0, 1),
      downhill_deg: number(0, 360, "degrees"),
    }),
  ),
  origin: z.optional(
    record("lat_deg and lon_deg", {
      lat_deg: number(-90, 90, "degrees"),
      lon_deg: number(-180, 180, "degrees"),
    }),
  ),
  source: z.optional(choice("taped", "stepped", "gps")),
  position_error_m: z.optional(number(0, 50, "m")),
  hollow: z.optional(flag()),
  canopy: z.optional(choice("wood", "open")),
  meeting_point: z.optional(spot()),
  muster: z.optional(spot()),
  fallback: z.optional(spot()),
});

export const groupSchema = record("a group", {
  id: id(),
  within_m: number(1, 1_000, "m"),
  zone: z.optional(text("a zone")),
});

export const hammocksPerTree = () => whole(1, 8);
