import { THEMES, type ThemeName } from "../colour/tokens.ts";
import type { GroupItem, Item, PathStep, Scene } from "../scene/scene.ts";
import type { Words } from "../scene/text-item.ts";
import { attribute, marks, paint, type Look } from "./attributes.ts";
import { LATIN_STACK } from "./font-stack.ts";
import { escaped, fixed } from "./numbers.ts";
import { textSvg } from "./text-svg.ts";

export interface RenderOptions extends Words {
  /** What the scene is drawn for where silent: one ink for papers, else light. */
  readonly theme?: ThemeName;
  /** A file of its own; else markup for a page whose stylesheet may override the colours by class. */
  readonly standalone: boolean;
  /** Font faces as a stylesheet, for a file that is to look the same anywhere; never for markup in a page. */
  readonly fontFaces?: string;
}

/**
 * A scene as SVG text: the same text for the same scene, everywhere. A paper stays black on white in any page.
 *
 * Colours, widths and faces are presentation attributes, so a file needs no stylesheet; there are no style
 * attributes and no style elements, so a strict page may hold it. `ref` is written as `data-ref`.
 */
export function renderSvg(scene: Scene, options: RenderOptions): string {
  const theme = options.theme ?? scene.theme ?? "light";
  const look: Look = {
    theme: THEMES[theme],
    classes: !options.standalone && theme !== "one-ink",
    labels: options.labels,
    measure: options.measure,
  };
  const { width, height, unit } = scene.size;
  const ground = {
    kind: "polygon",
    closed: true,
    points: corners(width, height),
    fill: scene.ground,
  } as const;
  return [
    options.standalone ? '<?xml version="1.0" encoding="UTF-8"?>\n' : "",
    '<svg xmlns="http://www.w3.org/2000/svg"',
    attribute("class", `ns-drawing ns-${scene.name}`),
    attribute("width", `${fixed(width)}${unit === "mm" ? "mm" : ""}`),
    attribute("height", `${fixed(height)}${unit === "mm" ? "mm" : ""}`),
    attribute("viewBox", `0 0 ${fixed(width)} ${fixed(height)}`),
    attribute("role", "img"),
    attribute("font-family", LATIN_STACK),
    attribute("font-variant", "tabular-nums"),
    attribute("text-rendering", "geometricPrecision"),
    attribute("stroke-linecap", "round"),
    attribute("stroke-linejoin", "round"),
    ">\n",
    `<title>${escaped(look.labels(scene.title))}</title>\n`,
    `<desc>${escaped(look.labels(scene.desc))}</desc>\n`,
    options.standalone && options.fontFaces !== undefined
      ? `<style>${escaped(options.fontFaces)}</style>\n`
      : "",
    scene.ground === "none" ? "" : itemSvg({ ...ground, class: "ns-ground" }, look),
    ...scene.items.map((item) => itemSvg(item, look)),
    "</svg>\n",
  ].join("");
}

function itemSvg(item: Item, look: Look): string {
  switch (item.kind) {
    case "group":
      return groupSvg(item, look);
    case "path":
      return `<path${marks(item, look)}${attribute("d", pathData(item.steps))}${paint(item, look)}/>\n`;
    case "polygon": {
      const points = item.points.map(([x, y]) => `${fixed(x)},${fixed(y)}`).join(" ");
      const element = item.closed ? "polygon" : "polyline";
      return `<${element}${marks(item, look)}${attribute("points", points)}${paint(item, look)}/>\n`;
    }
    case "circle": {
      const [cx, cy] = item.at;
      const place = `${attribute("cx", fixed(cx))}${attribute("cy", fixed(cy))}${attribute("r", fixed(item.r))}`;
      const hit = item.hit === true ? attribute("pointer-events", "all") : "";
      return `<circle${marks(item, look)}${place}${paint(item, look)}${hit}/>\n`;
    }
    case "text":
      return textSvg(item, look);
  }
}

function groupSvg(item: GroupItem, look: Look): string {
  const title = item.title === undefined ? "" : `<title>${escaped(look.labels(item.title))}</title>\n`;
  const inside = item.items.map((child) => itemSvg(child, look)).join("");
  return `<g${marks(item, look)}${transform(item)}${paint(item, look)}>\n${title}${inside}</g>\n`;
}

function transform({ move, turnRad, scale }: GroupItem): string {
  const parts: string[] = [];
  if (move !== undefined) parts.push(`translate(${fixed(move[0])} ${fixed(move[1])})`);
  if (turnRad !== undefined) parts.push(`rotate(${fixed((turnRad * 180) / Math.PI)})`);
  if (scale !== undefined) parts.push(`scale(${fixed(scale)})`);
  return parts.length === 0 ? "" : attribute("transform", parts.join(" "));
}

/** A path in the letters of SVG. */
export function pathData(steps: readonly PathStep[]): string {
  return steps.map(stepData).join("");
}

function stepData(step: PathStep): string {
  if (step[0] === "Z") return "Z";
  if (step[0] === "A") {
    const [, r, large, sweep, x, y] = step;
    return `A${fixed(r)} ${fixed(r)} 0 ${large} ${sweep} ${fixed(x)} ${fixed(y)}`;
  }
  const [letter, ...numbers] = step;
  return letter + numbers.map(fixed).join(" ");
}

function corners(width: number, height: number): readonly (readonly [number, number])[] {
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}
