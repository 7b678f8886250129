/** One line of the store: so many items alike. Only items "in-use" are dealt. */
export type KitItem = Hammock | Suspension | Tarp | UnderInsulation | OverInsulation | OtherKit;

export type KitState = "in-use" | "quarantined" | "retired";

interface KitCommon {
  readonly id: string;
  readonly count: number;
  readonly massKg?: number;
  readonly state: KitState;
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
}

export interface Tarp extends KitCommon {
  readonly kind: "tarp";
  readonly shape: string;
  readonly ridgeM: number;
  readonly widthM: number;
}

export interface UnderInsulation extends KitCommon {
  readonly kind: "under";
  readonly insulationM2KPerW?: number;
  readonly limitK?: number;
  readonly coveredRatio?: number;
}

export interface OverInsulation extends KitCommon {
  readonly kind: "over";
  readonly insulationM2KPerW?: number;
  readonly comfortK?: number;
}

export interface OtherKit extends KitCommon {
  readonly kind: "cord" | "peg" | "connector" | "light" | "other";
  readonly label?: string;
}
