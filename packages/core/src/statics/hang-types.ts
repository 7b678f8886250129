import type { Basis } from "../outcome/basis.ts";
import type { Limit } from "../outcome/outcome.ts";
import type { Radians } from "../quantity/angle.ts";

/** One end of the hang as asked for. */
export interface HangEnd {
  /** Trunk diameter at the strap [m]. */
  readonly dbhM: number;
  /** Ground at the tree [m], any common datum. */
  readonly elevationM: number;
}

export interface HangInput {
  /** Level distance centre to centre of the trunks [m]. */
  readonly spanM: number;
  readonly head: HangEnd;
  readonly foot: HangEnd;
  readonly hammock: {
    readonly lengthM: number;
    readonly ridgelineM?: number;
    readonly massKg: number;
    readonly eaN?: number;
  };
  readonly suspension: {
    /** Webbing wrapped and tied at the trunk, or an adjustable sling with its own tree strap. */
    readonly type: "tied-webbing" | "whoopie-sling";
    readonly minM: number;
    readonly maxM?: number;
    readonly eaN?: number;
    /** Whole turns of tied webbing round the trunk; absent: one. */
    readonly wraps?: number;
    /** The strap goes round the trunk and through its own eye; else it is tied, or its two eyes meet. */
    readonly throughOwnEye?: boolean;
    /** Shackle or carabiner between strap and sling, part of the length from bark to hammock [m]; absent: none. */
    readonly connectorM?: number;
    /** Webbing, or strap round the tree, that there is at each end [m]; absent: nobody said. */
    readonly ownedM?: number;
  };
  readonly sleeper: { readonly massKg: number; readonly statureM: number };
  readonly targets: {
    /** Mean of both strap angles below level, at the tree. */
    readonly angle: Radians;
    readonly seatHeightM?: number;
    readonly footRaiseM: number;
  };
  readonly limits: HangLimits;
  /** What the `ok` ranges are told by, where other than what the hang itself must keep. */
  readonly okLimits?: HangLimits;
  /** Standard deviation of the span [m], where it is other than a taped one's. */
  readonly spanErrorM?: number;
}

/** What bounds the hang; absent means nobody bounds it. */
export interface HangLimits {
  readonly angleMin: Radians;
  readonly angleMax: Radians;
  /** Highest the person who sets the strap can reach [m above the ground at that tree]. */
  readonly reachM?: number;
  readonly strapHeightMaxM?: number;
  readonly lowPointMaxM?: number;
  /** Least clearance of lowest cloth over the ground, lying [m]. */
  readonly lowPointMinM: number;
  readonly seatHeightMinM: number;
  readonly seatHeightMaxM: number;
  readonly footRaiseMinM: number;
  readonly footRaiseMaxM: number;
}

export interface StrapHang {
  /** Middle of the strap above the ground at this tree [m]. */
  readonly strapHeightM: number;
  /** The strap above the level through the head tree's ground [m]. */
  readonly aboveLevelM: number;
  /** Bark to hammock end, loaded [m]. */
  readonly strapLengthM: number;
  /** Length of webbing or strap to bring, wraps, knot and tail included [m]. */
  readonly webbingM: number;
  /** What that length, and the way from bark to hammock, is made of. */
  readonly parts?: StrapParts;
  /** Below level, at the tree. */
  readonly angle: Radians;
  readonly pullN: number;
  readonly sidewaysN: number;
  readonly downN: number;
}

/** One end of a suspension by its parts, bark to hammock end and what lies behind [m]. */
export interface StrapParts {
  /** Round the trunk: whole turns of webbing, or the girth that a tree strap goes round. */
  readonly roundTrunkM: number;
  /** Knot and tail of webbing; of a tree strap the overlap by which its eyes, or its own eye, come clear of the bark. */
  readonly tieM: number;
  /** From the bark to where strap and sling meet; the whole way for webbing, which has no sling. */
  readonly offBarkM: number;
  /** Shackle or carabiner. */
  readonly connectorM: number;
  /** The sling itself, connector to hammock end; 0 for webbing. */
  readonly slingM: number;
}

/** What straps give, apart from each other [m]. */
export interface HangSettling {
  /** Stretch of each strap under the sleeper; already in the lengths told. */
  readonly headStretchM: number;
  readonly footStretchM: number;
  /** How far the low point comes down in the first ten minutes: wraps and knots bed in. */
  readonly tenMinutesM: number;
  /** And from then until the morning: the straps creep. */
  readonly overnightM: number;
  /** And further where webbing is nylon and gets wet; absent for slings of slick fibre, which take no water. */
  readonly wetNylonM?: number;
}

/** Quantities that carry an `ok` range or a `band`; head and foot are told apart by the prefix. */
export type HangQuantity =
  | "head.strapHeightM"
  | "foot.strapHeightM"
  | "head.strapLengthM"
  | "foot.strapLengthM"
  | "head.angle"
  | "foot.angle"
  | "head.pullN"
  | "foot.pullN"
  | "spanM"
  | "seatHeightM"
  | "lowPointM"
  | "footRaiseM"
  | "ridgelinePullN";

/** How far one quantity may be off, all else as planned, before a limit is met. */
export interface OkRange {
  readonly low: number;
  readonly high: number;
  readonly bindsLow: Limit;
  readonly bindsHigh: Limit;
}

export type BandRange = readonly [low: number, high: number];

/**
 * Where everything is, in the upright plane through both trees. x runs from the head tree's centre
 * to the foot tree's, z up from the ground at the head tree [m].
 */
export interface HangShape {
  readonly headAnchor: Point2;
  readonly footAnchor: Point2;
  readonly headGather: Point2;
  readonly footGather: Point2;
  /** Cloth lying, gather to gather. */
  readonly cloth: readonly Point2[];
  /** Cloth with the sleeper sitting across the middle. */
  readonly clothSitting: readonly Point2[];
  /** Underside of the body on the cloth, lying: ankle, knee, hip, shoulder, head. */
  readonly body: Readonly<Record<"ankle" | "knee" | "hip" | "shoulder" | "head", Point2>>;
  readonly ridgelineTaut: boolean;
  readonly groundHeadZM: 0;
  readonly groundFootZM: number;
}

export type Point2 = readonly [xM: number, zM: number];

/** Something to know beside the figures: a limit that moved or is passed, or a model near its border. */
export type HangNote =
  /** The straps hang as near to the angle asked for as this limit lets them. */
  | { readonly key: "moved-by"; readonly limit: Limit }
  /** What was asked for lies outside this limit of `okLimits`; no `ok` ranges are told. */
  | { readonly key: "outside-usual"; readonly limit: Limit }
  | { readonly key: BorderNote };

/** Where the model is near its border. */
export type BorderNote =
  | "nearly-straight"
  | "short-cloth"
  | "short-straps"
  | "ridgeline-barely-taut"
  | "stretchy-straps"
  | "steep-ground"
  | "body-unlike-table";

export interface Hang {
  readonly head: StrapHang;
  readonly foot: StrapHang;
  readonly ridgelineM?: number;
  /** Absent without a ridgeline; 0 where it is slack. */
  readonly ridgelinePullN?: number;
  readonly seatHeightM: number;
  readonly lowPointM: number;
  readonly footRaiseM: number;
  /** The foot strap above the head strap, sighted level across [m]; needs no survey. */
  readonly levelFootOverHeadM: number;
  /** How far the low point comes down in the night, both parts of `settling` together [m]. */
  readonly settleM?: number;
  readonly settling?: HangSettling;
  readonly ok: Readonly<Partial<Record<HangQuantity, OkRange>>>;
  readonly band: Readonly<Partial<Record<HangQuantity, BandRange>>>;
  readonly shape: HangShape;
  readonly notes: readonly HangNote[];
  readonly residual: number;
  readonly iterations: number;
  readonly basis: Basis;
}
