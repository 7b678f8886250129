import type { Point3 } from "./ground-plane.ts";
import type { AreaVector } from "./rain-on-patch.ts";

/** Which layer a patch belongs to: what lies open on top, the cloth round it, the layer hung below. */
export type Layer = "sleeper" | "hammock" | "under";

export type BodyPart = "left" | "right" | "head" | "foot";

/** A small flat piece of the hammock with its sleeper. */
export interface Patch {
  readonly middle: Point3;
  readonly area: AreaVector;
  readonly layer: Layer;
  readonly parts: readonly BodyPart[];
}

export interface HungBody {
  readonly patches: readonly Patch[];
  /** Points of the top that a tarp must clear: rims and middle line. */
  readonly top: readonly Point3[];
}

export interface HungBodyInput {
  /** Underside of the loaded cloth, gather to gather, in the plane y = 0: x, z. */
  readonly cloth: readonly (readonly [xM: number, zM: number])[];
  /** Width of the hammock's cloth laid flat [m]. */
  readonly widthM: number;
  /** Pieces along the cloth; absent: as many as an answer needs. */
  readonly sections?: number;
}

/**
 * Hammock and sleeper as a trough for the rain to fall on.
 *
 *   half width 0.36 w/1.5 √sin, depth 0.30 √sin at the share of the way from gather to gather; half an ellipse below, level above
 *
 * Shapes   cloth line → sections × 9 patches, their areas outwards
 * Units    metres
 * Holds    any cloth with its gathers apart
 * Error    an estimate of how a loaded hammock stands open; 20 % of the water
 * Source   rain-shade; the section is common-practice (handbook/shelter.md)
 */
export function hungBody({ cloth, widthM, sections = SECTIONS }: HungBodyInput): HungBody {
  const rings = Array.from({ length: sections + 1 }, (_, index) => ringAt(cloth, index / sections, widthM));
  const patches: Patch[] = [];
  const top: Point3[] = [];
  rings.forEach((ring, index) => {
    top.push(...ring.slice(0, 1), ...ring.slice(AROUND));
    const next = rings[index + 1];
    if (next === undefined) return;
    for (let place = 0; place < ring.length; place++) {
      const after = (place + 1) % ring.length;
      const [a, b, c, d] = [ring[place], ring[after], next[after], next[place]];
      if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
      patches.push(patchOf([a, b, c, d], place, (index + 0.5) / sections));
    }
  });
  return { patches, top };
}

const SECTIONS = 12;
/** Pieces of the half ellipse below, and of the opening above. */
const AROUND = 6;
const ACROSS = 3;
/** A hammock of usual width stands open by so much, half, and is so deep [m]. Common practice. */
const HALF_OPEN_M = 0.36;
const USUAL_WIDTH_M = 1.5;
const DEEP_M = 0.3;
/** Ends are drawn together, but not to a point. */
const GATHERED = 0.02;

/** Left rim, down round the underside to the right rim, back over the opening. */
function ringAt(cloth: HungBodyInput["cloth"], share: number, widthM: number): Point3[] {
  const [x, z] = onLine(cloth, share);
  const open = Math.sqrt(Math.max(GATHERED, 4 * share * (1 - share)));
  const half = (HALF_OPEN_M * widthM * open) / USUAL_WIDTH_M;
  const deep = DEEP_M * open;
  const below = Array.from({ length: AROUND + 1 }, (_, index): Point3 => {
    const turn = (Math.PI * index) / AROUND;
    return [x, half * Math.cos(turn), z + deep * (1 - Math.sin(turn))];
  });
  const over = Array.from({ length: ACROSS - 1 }, (_, index): Point3 => {
    return [x, half * ((2 * (index + 1)) / ACROSS - 1), z + deep];
  });
  return [...below, ...over];
}

function onLine(line: HungBodyInput["cloth"], share: number): readonly [number, number] {
  const place = share * (line.length - 1);
  const index = Math.min(Math.floor(place), line.length - 2);
  const [from, to] = [line[index] ?? [0, 0], line[index + 1] ?? [0, 0]];
  const part = place - index;
  return [from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])];
}

function patchOf(
  [a, b, c, d]: readonly [Point3, Point3, Point3, Point3],
  place: number,
  share: number,
): Patch {
  const middle: Point3 = [
    (a[0] + b[0] + c[0] + d[0]) / 4,
    (a[1] + b[1] + c[1] + d[1]) / 4,
    (a[2] + b[2] + c[2] + d[2]) / 4,
  ];
  const [e, f] = [less(d, b), less(c, a)];
  const area: AreaVector = [
    (e[1] * f[2] - e[2] * f[1]) / 2,
    (e[2] * f[0] - e[0] * f[2]) / 2,
    (e[0] * f[1] - e[1] * f[0]) / 2,
  ];
  return { middle, area, layer: layerAt(place), parts: partsAt(middle[1], share) };
}

function less(a: Point3, b: Point3): Point3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function layerAt(place: number): Layer {
  if (place >= AROUND) return "sleeper";
  return place === 0 || place === AROUND - 1 ? "hammock" : "under";
}

/** Sides from their own half, ends from the quarter next to each gather. */
function partsAt(yM: number, share: number): BodyPart[] {
  const parts: BodyPart[] = [];
  if (yM > MIDDLE_M) parts.push("left");
  if (yM < -MIDDLE_M) parts.push("right");
  if (share < END_SHARE) parts.push("head");
  if (share > 1 - END_SHARE) parts.push("foot");
  return parts;
}

const MIDDLE_M = 1e-9;
const END_SHARE = 0.25;
