/** Parts of the body in the order of the table. Trunk in three parts; limbs count both sides together. */
export type SegmentName =
  | "head"
  | "upper-trunk"
  | "middle-trunk"
  | "lower-trunk"
  | "upper-arms"
  | "forearms"
  | "hands"
  | "thighs"
  | "shanks"
  | "feet";

/** One part of the body. Ratios are of body mass and of stature. */
export interface BodySegment {
  readonly name: SegmentName;
  /** Both sides together for limbs. */
  readonly massRatio: number;
  readonly lengthRatio: number;
  /** Centre of mass from the cranial (proximal) end, over the length. */
  readonly comRatio: number;
  /** The cranial end above the soles when standing with arms down, over the stature. */
  readonly topRatio: number;
  /** The caudal end above the soles, over the stature. */
  readonly bottomRatio: number;
}

export type BodyTable = "women" | "men" | "both";

/**
 * Segments of an adult's body: mass, length, centre of mass, and where each lies along a straight body.
 *
 * Shapes   one entry a segment name, head first
 * Units    ratios of body mass and of stature
 * Holds    adults; for children the trunk and head are heavier than told here
 * Error    masses sum to 1 within 1e-4 (rounding of the published table); whole-body centre of mass at
 *          0.561 ± 0.01 of stature. Spread between people: about 1 % of body mass a segment
 * Source   de-leva-1996; lengths of the trunk's thirds and the shoulder's height from memory
 */
export function deLevaSegments(table: BodyTable): readonly BodySegment[] {
  return TABLES[table];
}

type Row = readonly [massPercent: number, comPercent: number, lengthMm: number];

interface Published {
  readonly statureMm: number;
  /** Middle of the shoulder joints below the seventh neck vertebra [mm]. */
  readonly shoulderDropMm: number;
  readonly rows: Readonly<Record<SegmentName, Row>>;
}

const WOMEN: Published = {
  statureMm: 1735,
  shoulderDropMm: 116.9,
  rows: {
    head: [6.68, 48.41, 243.7],
    "upper-trunk": [15.45, 50.5, 228],
    "middle-trunk": [14.65, 45.12, 205.3],
    "lower-trunk": [12.47, 49.2, 181.5],
    "upper-arms": [2 * 2.55, 57.54, 275.1],
    forearms: [2 * 1.38, 45.59, 264.3],
    hands: [2 * 0.56, 34.27, 170.1],
    thighs: [2 * 14.78, 36.12, 368.5],
    shanks: [2 * 4.81, 44.16, 432.3],
    feet: [2 * 1.29, 40.14, 228.3],
  },
};

const MEN: Published = {
  statureMm: 1741,
  shoulderDropMm: 87.8,
  rows: {
    head: [6.94, 50.02, 242.9],
    "upper-trunk": [15.96, 50.66, 242.1],
    "middle-trunk": [16.33, 45.02, 215.5],
    "lower-trunk": [11.17, 61.15, 145.7],
    "upper-arms": [2 * 2.71, 57.72, 281.7],
    forearms: [2 * 1.62, 45.74, 268.9],
    hands: [2 * 0.61, 36.24, 187.9],
    thighs: [2 * 14.16, 40.95, 422.2],
    shanks: [2 * 4.33, 44.59, 434],
    feet: [2 * 1.37, 44.15, 258.1],
  },
};

/** What each segment hangs from, head to foot: "top" is the crown, "shoulder" the shoulder joints. */
const HANGS_FROM: Readonly<Record<Exclude<SegmentName, "feet">, SegmentName | "top" | "shoulder">> = {
  head: "top",
  "upper-trunk": "head",
  "middle-trunk": "upper-trunk",
  "lower-trunk": "middle-trunk",
  "upper-arms": "shoulder",
  forearms: "upper-arms",
  hands: "forearms",
  thighs: "lower-trunk",
  shanks: "thighs",
};

/** Feet lie pointing up, so along the body they reach from the soles to twice this height [m/m]. */
const FOOT_COM_RATIO = 0.04 / 1.74;

const NAMES: readonly SegmentName[] = [
  "head",
  "upper-trunk",
  "middle-trunk",
  "lower-trunk",
  "upper-arms",
  "forearms",
  "hands",
  "thighs",
  "shanks",
  "feet",
];

function segments(published: Published): readonly BodySegment[] {
  return NAMES.map((name) => {
    const [massPercent, comPercent, lengthMm] = published.rows[name];
    const lengthRatio = lengthMm / published.statureMm;
    const share = { name, massRatio: massPercent / 100, lengthRatio, comRatio: comPercent / 100 };
    if (name === "feet") return { ...share, comRatio: 0.5, topRatio: 2 * FOOT_COM_RATIO, bottomRatio: 0 };
    const topRatio = topOf(published, name);
    return { ...share, topRatio, bottomRatio: topRatio - lengthRatio };
  });
}

function topOf(published: Published, name: Exclude<SegmentName, "feet">): number {
  const above = HANGS_FROM[name];
  if (above === "top") return 1;
  if (above === "shoulder") {
    return 1 - (published.rows.head[2] + published.shoulderDropMm) / published.statureMm;
  }
  if (above === "feet") return 0;
  return topOf(published, above) - published.rows[above][2] / published.statureMm;
}

function average(women: readonly BodySegment[], men: readonly BodySegment[]): readonly BodySegment[] {
  return women.map((hers, index) => {
    const his = men[index] ?? hers;
    const middle = (field: Exclude<keyof BodySegment, "name">) => (hers[field] + his[field]) / 2;
    return {
      name: hers.name,
      massRatio: middle("massRatio"),
      lengthRatio: middle("lengthRatio"),
      comRatio: middle("comRatio"),
      topRatio: middle("topRatio"),
      bottomRatio: middle("bottomRatio"),
    };
  });
}

const OF_WOMEN = segments(WOMEN);
const OF_MEN = segments(MEN);
const TABLES: Readonly<Record<BodyTable, readonly BodySegment[]>> = {
  women: OF_WOMEN,
  men: OF_MEN,
  both: average(OF_WOMEN, OF_MEN),
};
