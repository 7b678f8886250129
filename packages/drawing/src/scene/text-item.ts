import type { WordKey } from "../words/english.ts";

/**
 * Text as data: what is to be said, never the letters themselves. `edge` turns an item into words and
 * units of the reader's choice; drawings tested here use plain SI English.
 */
export type TextItem = NameText | SaidText | WordText | QuantityText | BodyMarkText | DayText;

/** The name of a person, a place or a tag, printed as it is written. */
export interface NameText {
  readonly name: string;
}

/** Words already chosen: one line of a sentence that was broken to fit. */
export interface SaidText {
  readonly said: string;
}

/** A sentence or word by its key; every `{hole}` of the sentence takes the item of that name. */
export interface WordText {
  readonly word: WordKey;
  readonly args?: Readonly<Record<string, TextItem>>;
}

export type Quantity =
  /** A height or distance [m], "1.70 m". */
  | "length"
  /** A difference a hand lets out [m], "20 cm". */
  | "short-length"
  /** A trunk's diameter [m], "34 cm". */
  | "diameter"
  /** Of webbing [m], "25 mm". */
  | "width"
  | "angle"
  | "force"
  /** A force told as the mass that hangs with it [N], "78 kg". */
  | "hanging"
  | "steps"
  | "count"
  /** Rise per run, "1 in 12". */
  | "slope"
  /** Clockwise from north [rad], "north-west". */
  | "bearing"
  /** Water that arrives [m³/s], "120 mL in an hour". */
  | "flow"
  /** [m/s] */
  | "speed"
  /** [K], told in °C. */
  | "temperature"
  | "mass"
  /** A ratio, told in %. */
  | "share"
  /** Heat through an area [W/m²]. */
  | "heat"
  /** [m²] */
  | "area";

export interface QuantityText {
  readonly quantity: Quantity;
  readonly value: number;
  /** Digits after the point in SI. */
  readonly digits: number;
  /** Number and unit apart, where they are set in two sizes. */
  readonly part?: "number" | "unit";
}

/** A height as a place on the body of somebody `statureM` tall, "forehead". */
export interface BodyMarkText {
  readonly bodyMarkM: number;
  readonly statureM: number;
}

/** A civil day, "2027-05-14". */
export interface DayText {
  readonly day: string;
  readonly style: "short" | "with-weekday";
}

export type Labels = (item: TextItem) => string;

/** Weight as the font has it: 400 to 700. */
export type Weight = 400 | 500 | 600 | 700;

/** The width of a text in the unit of `size`. */
export type Measure = (text: string, size: number, weight: Weight) => number;

/** Handed in by the caller: words and units of the reader, and how wide they are. */
export interface Words {
  readonly labels: Labels;
  readonly measure: Measure;
}
