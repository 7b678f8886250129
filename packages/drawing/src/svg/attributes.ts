import type { Theme } from "../colour/tokens.ts";
import type { Colour, Paint } from "../scene/scene.ts";
import type { Words } from "../scene/text-item.ts";
import { escaped, fixed } from "./numbers.ts";

/** What the writer of shapes needs to know besides the shape. */
export interface Look extends Words {
  readonly theme: Theme;
  /** Whether shapes carry a class for each colour, for a page's stylesheet. */
  readonly classes: boolean;
}

export function attribute(name: string, value: string): string {
  return ` ${name}="${escaped(value)}"`;
}

interface Marks extends Paint {
  readonly class?: string;
  readonly ref?: string;
}

/** Class and reference of a shape. */
export function marks(item: Marks, look: Look): string {
  const names = [item.class, ...(look.classes ? colourClasses(item) : [])].filter(
    (name) => name !== undefined && name !== "",
  );
  const classes = names.length === 0 ? "" : attribute("class", names.join(" "));
  return item.ref === undefined ? classes : `${classes}${attribute("data-ref", item.ref)}`;
}

/** Fill, stroke and how the line runs. */
export function paint(item: Paint, look: Look): string {
  return [
    item.fill === undefined ? "" : attribute("fill", colour(item.fill, look)),
    item.stroke === undefined ? "" : attribute("stroke", colour(item.stroke, look)),
    item.width === undefined ? "" : attribute("stroke-width", fixed(item.width)),
    item.dash === undefined ? "" : attribute("stroke-dasharray", item.dash.map(fixed).join(" ")),
    item.cap === undefined ? "" : attribute("stroke-linecap", item.cap),
    item.join === undefined ? "" : attribute("stroke-linejoin", item.join),
  ].join("");
}

function colour(token: Colour, look: Look): string {
  return token === "none" ? "none" : look.theme[token];
}

function colourClasses({ fill, stroke }: Paint): string[] {
  const names: string[] = [];
  if (fill !== undefined && fill !== "none") names.push(`ns-fill-${fill}`);
  if (stroke !== undefined && stroke !== "none") names.push(`ns-stroke-${stroke}`);
  return names;
}
