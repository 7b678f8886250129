import type { Finding } from "../outcome/finding.ts";
import type { Radians } from "../quantity/angle.ts";

/**
 * The tarp of one berth, in SI units.
 *
 * Berth coordinates, the same as those of `HangShape` with a third axis: x runs level from the head tree's
 * centre to the foot tree's, y to the left of who looks from head to foot, z up from the ground at the head tree.
 * "Left" and "right" are always those of who looks from the head tree to the foot tree.
 */
export type Point3 = readonly [xM: number, yM: number, zM: number];

/**
 * Outline of a tarp laid flat. "diamond": a square hung over its diagonal. "hexagon": the lower edges shorter than
 * the ridge. "asymmetric": a diamond whose side corners are shifted to where head and feet lie.
 */
export type TarpShape = "rectangle" | "diamond" | "hexagon" | "asymmetric";

export type TarpSide = "left" | "right";
export type TarpEnd = "head" | "foot";

/** How a tarp is pitched. All that is searched is here; everything else of a `BerthTarp` follows from it. */
export interface TarpPitch {
  /** Where the ridge cord is tied, above the ground at that tree [m]. */
  readonly headTieM: number;
  readonly footTieM: number;
  /** Middle of the tarp's ridge from the middle between the hammock's gathers, along the line, footwards [m]. */
  readonly shiftM: number;
  /** Slope of each side below level, across the ridge. A porch is the side that is raised: a small angle. */
  readonly leftAngle: Radians;
  readonly rightAngle: Radians;
  readonly porch?: TarpSide;
  /** Ends folded shut ("doors"); empty: both open. Only rectangles fold. */
  readonly closedEnds: readonly TarpEnd[];
  /** Sides whose lower edge is pegged right at the ground, without guys. */
  readonly pegged: readonly TarpSide[];
}

/** One flat piece of cloth, its corners in order round; the edges between may be hollow (many corners). */
export interface TarpPanel {
  readonly name: TarpSide | "head-door" | "foot-door";
  readonly corners: readonly Point3[];
}

/** What a guy would run into. */
export interface GuyConflict {
  readonly with: "stem" | "path" | "berth" | "obstacle";
  /** Id of the tree, obstacle or berth. */
  readonly id: string;
  /** Nearest level distance from the line of the guy (or its peg) to it; 0 where they cross [m]. */
  readonly gapM: number;
}

/** One guy line, from the cloth to its peg. */
export interface Guy {
  /** "left/head", "left/mid-1", "left/foot", "right/head" …; "head-door" for a closed end's. */
  readonly name: string;
  readonly from: Point3;
  readonly peg: Point3;
  /** Cord from cloth to peg [m]; 0 where the edge is pegged at the ground. */
  readonly lengthM: number;
  /** Slope of the guy, above the ground it is pegged in. */
  readonly angle: Radians;
  /** Level distance from the peg to the ridge line, across, and along the line from the head tree's centre [m]. */
  readonly asideM: number;
  readonly alongM: number;
  /** Greatest pull in the night's gust at the berth [N]. Never on cards or papers. */
  readonly pullN: number;
  readonly conflicts: readonly GuyConflict[];
}

/** The cord that the tarp hangs on. */
export interface RidgeLine {
  /** From the middle of the head's trunk to the bark of the foot's [m]; friction hitches hold both ends of the tarp. */
  readonly spanM: number;
  readonly headTieM: number;
  readonly footTieM: number;
  /** Dip at its middle under the tarp's weight, calm; and how far the gust moves it [m]. */
  readonly sagM: number;
  readonly gustSagM: number;
  /** Pull in the cord, calm and in the gust [N]. Never on cards or papers. */
  readonly pullN: number;
  readonly gustPullN: number;
  /** What the tie does to each tree in the gust: sideways and its height above that tree's ground. */
  readonly onTrees: Readonly<Record<TarpEnd, TreeLoad>>;
}

/** A level force on a tree, to be added to the hang's as a vector. */
export interface TreeLoad {
  readonly sidewaysN: number;
  readonly heightM: number;
  /** Clockwise from north; absent where nobody knows the berth's bearing. */
  readonly towardsRad?: number;
}

/** The break in the run of water along the suspension. */
export interface DripLine {
  /** Where the string is tied: from the hammock's gather along the suspension towards the tree [m]. */
  readonly fromGatherM: number;
  /** From there inwards, level, to under the tarp's edge; negative: the place lies outside the tarp [m]. */
  readonly insideM: number;
  /** Strap against the tarp's end: upright distance between the suspension and the tarp's ridge end, + is clear below. */
  readonly strapClearM: number;
  readonly strap: "clear" | "rubs" | "above-tarp";
}

/** Parts that may get wet, plainly. Sides are the sleeper's surroundings left and right, ends the hammock's ends. */
export type WetPart = TarpSide | TarpEnd;

/** Plain answer for one side or end, judged over ±45° of the night's wind (all round where nobody knows it). */
export interface WetVerdict {
  readonly part: WetPart;
  readonly covered: boolean;
  /** Share of the rain that would fall there in the open that still arrives, worst wind of the ±45°. */
  readonly shareRatio: number;
  /** Lowering the tarp as a whole by so much would cover it [m]; absent: covered, or lowering alone does not. */
  readonly lowerByM?: number;
}

/** Water that arrives [m³/s]; ×3.6e9 is mL/h. */
export interface WetRates {
  readonly hammockM3S: number;
  readonly sleeperM3S: number;
  readonly underM3S: number;
}

/** Where it gets wet, as seen from above: share of the open rain that falls through each cell of a level grid. */
export interface WetMap {
  /** Lower corner of the grid and its cell, berth coordinates; the grid lies level at `zM`. */
  readonly fromXM: number;
  readonly fromYM: number;
  readonly zM: number;
  readonly cellM: number;
  readonly columns: number;
  readonly rows: number;
  /** Row by row from `fromYM`, 0 dry to 1 as in the open: rows × columns. */
  readonly shares: readonly number[];
}

/** One spoke of the rose. */
export interface RoseSpoke {
  /** Where the wind comes from: clockwise from north where the bearing is known, else from head-to-foot. */
  readonly windFromRad: number;
  readonly wet: WetRates;
}

/** One way to pitch that no other beats in every respect. */
export interface PitchOption {
  readonly item: string;
  readonly pitch: TarpPitch;
  /** Water on hammock, sleeper and under layer, mean over ±45° of the night's wind [m³/s]. */
  readonly wetM3S: number;
  readonly headroomM: number;
  readonly ventM2: number;
  /** Greatest guy pull in the gust [N]. */
  readonly sideLoadN: number;
  readonly chosen: boolean;
}

export interface BerthTarp {
  /** Id of the kit item. */
  readonly item: string;
  readonly shape: TarpShape;
  readonly pitch: TarpPitch;
  readonly panels: readonly TarpPanel[];
  readonly guys: readonly Guy[];
  readonly ridge: RidgeLine;
  /** Ridge beyond the hammock's gather at each end [m]; negative: too short. */
  readonly overhangM: Readonly<Record<TarpEnd, number>>;
  /** Cloth beyond the diagonal lie's outermost points: the head's and the feet's, measured flat [m]. */
  readonly diagonalM: Readonly<Record<TarpEnd, number>>;
  /** Lowest cloth over the ridgeline of the hammock (or the chord of its gathers) [m]. */
  readonly headroomM: number;
  /** Opening through which breath leaves: ends and edges above the ground [m²]. */
  readonly ventM2: number;
  readonly drip: Readonly<Record<TarpEnd, DripLine>>;
  /** Four plain answers: left, right, head, foot. Absent where no rain is forecast and nobody asked. */
  readonly wetVerdicts: readonly WetVerdict[];
  /** Tonight's rain and wind, the wind's worst of ±45°. */
  readonly wet: WetRates;
  /** Big drops from the leaves after rain, without wind. */
  readonly canopyDrip: WetRates;
  /** Behind "why"; absent where nobody asked. */
  readonly wetMap?: WetMap;
  readonly rose?: readonly RoseSpoke[];
  readonly options?: readonly PitchOption[];
  /** Wind at the tarp's height in the mean and in the gust [m/s]. */
  readonly windMS: number;
  readonly gustMS: number;
  readonly findings: readonly Finding[];
}
