import type { CutMaterial, Inspection, WearState } from "./store-types.ts";
import type { TarpShape } from "./tarp-types.ts";
import type { OverWarmth, UnderWarmth } from "./warmth-types.ts";

/** One line of the store: so many items alike. Only items "in-use" are dealt. */
export type KitItem = Hammock | Suspension | Tarp | UnderInsulation | OverInsulation | Cord | OtherKit;

export type KitState = "in-use" | "quarantined" | "retired";

interface KitCommon {
  readonly id: string;
  readonly count: number;
  /** Of one piece [kg]. */
  readonly massKg?: number;
  /** Of the whole line; single pieces are quarantined or retired by their number, in `inspections`. */
  readonly state: KitState;
  /** Numbers marked on the pieces, no more than `count` and no two alike. */
  readonly numbers?: readonly string[];
  readonly wear?: WearState;
  /** Civil date of first use. */
  readonly inServiceOn?: string;
  /** The log of this line, oldest first; the last entry is the last inspection. */
  readonly inspections?: readonly Inspection[];
}

export interface Hammock extends KitCommon {
  readonly kind: "hammock";
  readonly lengthM: number;
  readonly widthM: number;
  readonly ridgelineM?: number;
  readonly maxUserKg?: number;
  readonly layers: number;
  readonly net: boolean;
  readonly eaN?: number;
}

export type SuspensionType = "tied-webbing" | "whoopie-sling";

export interface Suspension extends KitCommon {
  readonly kind: "suspension";
  readonly type: SuspensionType;
  /** Shortest and longest length from bark to hammock end [m]. */
  readonly minM: number;
  readonly maxM?: number;
  readonly strapLengthM?: number;
  readonly strapWidthM: number;
  readonly eaN?: number;
  readonly ratedLoadN?: number;
  readonly breakingN?: number;
  /** The strap goes round the trunk and through its own eye; else it wraps, or its two eyes meet. */
  readonly throughOwnEye?: boolean;
  /** Whole turns of tied webbing round the trunk; absent: one. */
  readonly wraps?: number;
  /** Shackle or carabiner between strap and sling, part of `minM` and `maxM` [m]; absent: none. */
  readonly connectorM?: number;
}

export interface Tarp extends KitCommon {
  readonly kind: "tarp";
  readonly shape: TarpShape;
  /** Along the ridge; a diamond's and an asymmetric one's diagonal [m]. */
  readonly ridgeM: number;
  /** Across the ridge, edge to edge, laid flat [m]. */
  readonly widthM: number;
  /** Length of the lower edges of a hexagon [m]; absent: as in the table of defaults. */
  readonly edgeM?: number;
  /** How far the side corners of an asymmetric one are shifted along the ridge, each its own way [m]. */
  readonly skewM?: number;
  /** How hollow each edge is cut, at its middle [m]; absent: straight. */
  readonly catenaryCutM?: number;
  /** Tie-outs along each lower edge besides the corners; absent: none. */
  readonly tieOuts?: number;
}

export interface UnderInsulation extends KitCommon, UnderWarmth {
  readonly kind: "under";
  /** A mat lies in the hammock, best between two layers; an underblanket hangs below it. Absent: not known. */
  readonly form?: "mat" | "underblanket";
  readonly lengthM?: number;
  readonly widthM?: number;
  /** Whether an underblanket can be hung below a hammock whose net goes all round. Absent: it can. */
  readonly fitsNet?: boolean;
}

export interface OverInsulation extends KitCommon, OverWarmth {
  readonly kind: "over";
  /** A quilt lies on top; a bag goes all round and is pressed flat below. Absent: not known. */
  readonly form?: "bag" | "quilt";
  readonly lengthM?: number;
}

/** Cord or webbing. With `lengthM` a line is so many spools (or lengths) of that much each, to be cut from. */
export interface Cord extends KitCommon {
  readonly kind: "cord";
  readonly label?: string;
  readonly material?: CutMaterial;
  readonly lengthM?: number;
  readonly widthM?: number;
}

export interface OtherKit extends KitCommon {
  readonly kind: "peg" | "connector" | "light" | "other";
  readonly label?: string;
  /** A peg: what one held in this ground, measured by the user along the guy with a luggage scale [N]. */
  readonly holdsN?: number;
}
