import type { ColourToken, ThemeName } from "../colour/tokens.ts";
import type { TextItem, Weight } from "./text-item.ts";

/** A drawing as data: shapes and texts in one unit, x to the right, y down. */
export interface Scene {
  /** Names the drawing: letters, digits and dashes. */
  readonly name: string;
  readonly size: SceneSize;
  /** What a reader who does not see the drawing is told. */
  readonly title: TextItem;
  readonly desc: TextItem;
  readonly ground: Colour;
  /** What it is drawn for, where it is not a screen: papers are one ink. */
  readonly theme?: ThemeName;
  readonly items: readonly Item[];
}

export interface SceneSize {
  readonly width: number;
  readonly height: number;
  readonly unit: "px" | "mm";
}

export type Item = GroupItem | PathItem | PolygonItem | CircleItem | TextRunItem;

export type XY = readonly [x: number, y: number];

export type Colour = ColourToken | "none";

/** Ink of a shape; what is silent comes from the group around it. */
export interface Paint {
  readonly fill?: Colour;
  readonly stroke?: Colour;
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly cap?: "butt" | "round" | "square";
  readonly join?: "miter" | "round";
}

interface Marked {
  /** Class names of our own, each beginning with `ns-`. */
  readonly class?: string;
  /** What the shape stands for: "tree/K12", "berth/3", "obstacle/fire". */
  readonly ref?: string;
}

export interface GroupItem extends Marked, Paint {
  readonly kind: "group";
  readonly items: readonly Item[];
  readonly move?: XY;
  readonly scale?: number;
  /** Turned clockwise about the moved origin [rad]. */
  readonly turnRad?: number;
  /** What the group stands for, in words. */
  readonly title?: TextItem;
}

export type PathStep =
  | readonly ["M" | "L", number, number]
  | readonly ["Q", number, number, number, number]
  | readonly ["C", number, number, number, number, number, number]
  /** Radius, large arc, clockwise, end. */
  | readonly ["A", number, 0 | 1, 0 | 1, number, number]
  | readonly ["Z"];

export interface PathItem extends Marked, Paint {
  readonly kind: "path";
  readonly steps: readonly PathStep[];
}

export interface PolygonItem extends Marked, Paint {
  readonly kind: "polygon";
  readonly points: readonly XY[];
  readonly closed: boolean;
}

export interface CircleItem extends Marked, Paint {
  readonly kind: "circle";
  readonly at: XY;
  readonly r: number;
  /** Nothing to see, only to press. */
  readonly hit?: true;
}

/** One line of text, of one or several runs. */
export interface TextRunItem extends Marked {
  readonly kind: "text";
  /** Left end, middle or right end of the base line. */
  readonly at: XY;
  readonly anchor: "start" | "middle" | "end";
  readonly fill: ColourToken;
  readonly runs: readonly TextRun[];
  /** Colour of the rim that keeps the text off what lies under it. */
  readonly halo?: ColourToken;
  /** Longer texts are cut at a grapheme, with "…". */
  readonly maxWidth?: number;
}

export interface TextRun {
  readonly item: TextItem;
  readonly size: number;
  readonly weight: Weight;
}
