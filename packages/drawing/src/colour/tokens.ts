export type ThemeName = "light" | "dark" | "red-night" | "one-ink";

export type ColourToken =
  | "paper"
  | "panel"
  | "wood"
  | "ink"
  | "soft"
  | "rule"
  | "cloth"
  | "cloth-tint"
  | "on-action"
  | "strap"
  | "clear"
  | "look"
  | "look-tint"
  | "look-ink"
  | "no"
  | "no-tint"
  | "water"
  | "water-tint";

export type Theme = Readonly<Record<ColourToken, string>>;

/**
 * The colours, by theme. Text takes ink, soft, cloth, clear, no, on-action (on a cloth or no fill) and
 * look-ink (on a look fill); the others are for graphics. `one-ink` is for papers: black on white, no grey.
 */
export const THEMES: Readonly<Record<ThemeName, Theme>> = {
  light: {
    paper: "#F6F8F4",
    panel: "#FFFFFF",
    wood: "#E9EEE4",
    ink: "#13201E",
    soft: "#394845",
    rule: "#6E7C78",
    cloth: "#2B3F9E",
    "cloth-tint": "#DCE3F8",
    "on-action": "#FFFFFF",
    strap: "#B65A00",
    clear: "#0B5750",
    look: "#FFD24A",
    "look-tint": "#FFF0C2",
    "look-ink": "#13201E",
    no: "#860B3C",
    "no-tint": "#FBE3EA",
    water: "#2B83A6",
    "water-tint": "#D3E8F2",
  },
  dark: {
    paper: "#0E1618",
    panel: "#172225",
    wood: "#131E1D",
    ink: "#EDF3F0",
    soft: "#BCC9C5",
    rule: "#7C8F8A",
    cloth: "#B0BEFF",
    "cloth-tint": "#222C57",
    "on-action": "#0E1618",
    strap: "#E8A03C",
    clear: "#74D8C8",
    look: "#FFD24A",
    "look-tint": "#3A2E10",
    "look-ink": "#0E1618",
    no: "#FF9EB8",
    "no-tint": "#43132A",
    water: "#3FA3B8",
    "water-tint": "#153443",
  },
  "red-night": {
    paper: "#000000",
    panel: "#140400",
    wood: "#0A0200",
    ink: "#FF6E14",
    soft: "#FF6E14",
    rule: "#B83C00",
    cloth: "#FF6E14",
    "cloth-tint": "#180600",
    "on-action": "#000000",
    strap: "#D95200",
    clear: "#FF6E14",
    look: "#140400",
    "look-tint": "#140400",
    "look-ink": "#FF6E14",
    no: "#FF6E14",
    "no-tint": "#140400",
    water: "#D95200",
    "water-tint": "#140400",
  },
  "one-ink": {
    paper: "#FFFFFF",
    panel: "#FFFFFF",
    wood: "#FFFFFF",
    ink: "#000000",
    soft: "#000000",
    rule: "#000000",
    cloth: "#000000",
    "cloth-tint": "#FFFFFF",
    "on-action": "#FFFFFF",
    strap: "#000000",
    clear: "#000000",
    look: "#FFFFFF",
    "look-tint": "#FFFFFF",
    "look-ink": "#000000",
    no: "#000000",
    "no-tint": "#FFFFFF",
    water: "#000000",
    "water-tint": "#FFFFFF",
  },
};

/** Line weights on screen [px]. */
export const LINE = {
  trunk: 3,
  cloth: 3.5,
  strap: 2.5,
  tarp: 2,
  guy: 1.25,
  dimension: 1,
  form: 0.75,
} as const;

/** Line weights on paper [mm]. */
export const LINE_MM = {
  trunk: 0.7,
  cloth: 0.8,
  strap: 0.5,
  tarp: 0.4,
  guy: 0.25,
  dimension: 0.2,
  form: 0.15,
} as const;

/** Type steps on screen [px]. */
export const TYPE = { shout: 112, say: 40, head: 28, lead: 21, body: 18, note: 15 } as const;

/** Type steps on a card [mm], from points of 1/72 inch. */
export const TYPE_MM = {
  shout: pointsInMm(34),
  name: pointsInMm(19),
  head: pointsInMm(15),
  lead: pointsInMm(12.5),
  body: pointsInMm(11),
  note: pointsInMm(9),
} as const;

function pointsInMm(points: number): number {
  return (points * 25.4) / 72;
}
