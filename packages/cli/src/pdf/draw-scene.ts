import {
  pathData,
  setRuns,
  type GroupItem,
  type Item,
  type Paint,
  type Scene,
  type TextRunItem,
  type Theme,
  type Words,
} from "@nightspan/drawing";
import type { Ink } from "./face.ts";
import type { Faces } from "./faces.ts";
import { SIZE_SHARE } from "./pdf-words.ts";

/** What drawing on a page needs to know besides the shapes. */
export interface Page {
  readonly doc: PDFKit.PDFDocument;
  readonly theme: Theme;
  readonly words: Words;
  readonly faces: Faces;
  /** Takes the lines of text in their order, for readers of the page. */
  readonly section: PDFKit.PDFStructureElement;
}

/** Paint as it stands after what the groups around a shape say. */
type FullPaint = Required<Omit<Paint, "dash">> & Pick<Paint, "dash">;

const ROOT: FullPaint = { fill: "ink", stroke: "none", width: 1, cap: "round", join: "round" };

/** A scene on the page: shapes as artwork, each line of text as a paragraph, in the order of the drawing. */
export function drawScene(scene: Scene, page: Page): void {
  if (scene.ground !== "none") {
    const { width, height } = scene.size;
    drawShape({ fill: scene.ground, stroke: "none" }, ROOT, page, (doc) => doc.rect(0, 0, width, height));
  }
  for (const item of scene.items) drawItem(item, ROOT, page);
}

function drawItem(item: Item, around: FullPaint, page: Page): void {
  switch (item.kind) {
    case "group":
      drawGroup(item, around, page);
      return;
    case "path":
      drawShape(item, around, page, (doc) => doc.path(pathData(item.steps)));
      return;
    case "polygon": {
      const data = item.points.map(([x, y], index) => [index === 0 ? "M" : "L", x, y] as const);
      const steps = item.closed ? [...data, ["Z"] as const] : data;
      drawShape(item, around, page, (doc) => doc.path(pathData(steps)));
      return;
    }
    case "circle":
      drawShape(item, around, page, (doc) => doc.circle(item.at[0], item.at[1], item.r));
      return;
    case "text":
      drawText(item, page);
  }
}

function drawGroup(item: GroupItem, around: FullPaint, page: Page): void {
  const { doc } = page;
  const { move, turnRad, scale } = item;
  doc.save();
  if (move !== undefined) doc.translate(move[0], move[1]);
  if (turnRad !== undefined) doc.rotate((turnRad * 180) / Math.PI);
  if (scale !== undefined) doc.scale(scale, scale);
  for (const child of item.items) drawItem(child, within(item, around), page);
  doc.restore();
}

function within({ fill, stroke, width, dash, cap, join }: Paint, around: FullPaint): FullPaint {
  const laid = dash ?? around.dash;
  return {
    fill: fill ?? around.fill,
    stroke: stroke ?? around.stroke,
    width: width ?? around.width,
    cap: cap ?? around.cap,
    join: join ?? around.join,
    ...(laid === undefined ? {} : { dash: laid }),
  };
}

function drawShape(
  item: Paint,
  around: FullPaint,
  { doc, theme }: Page,
  outline: (doc: PDFKit.PDFDocument) => void,
): void {
  const { fill, stroke, width, dash, cap, join } = within(item, around);
  const lined = stroke !== "none" && width > 0;
  if (fill === "none" && !lined) return;
  doc.markContent("Artifact", { type: "Layout" });
  if (lined) {
    doc.lineWidth(width).lineCap(cap).lineJoin(join);
    doc.addContent(`[${(dash ?? []).join(" ")}] 0 d`);
  }
  outline(doc);
  if (fill !== "none" && lined) doc.fillAndStroke(theme[fill], theme[stroke]);
  else if (fill !== "none") doc.fill(theme[fill]);
  else if (stroke !== "none") doc.stroke(theme[stroke]);
  doc.endMarkedContent();
}

function drawText(item: TextRunItem, page: Page): void {
  const { doc, theme, section } = page;
  if (item.halo !== undefined) {
    doc.markContent("Artifact", { type: "Layout" });
    const size = item.runs[0]?.size ?? 0;
    setLine(item, page, { colour: theme[item.halo], rim: size / 4 });
    doc.endMarkedContent();
  }
  const content = doc.markStructureContent("P");
  section.add(doc.struct("P", {}, [content]));
  setLine(item, page, { colour: theme[item.fill] });
  doc.endMarkedContent();
}

/** All runs of a line, from its left end. */
function setLine(item: TextRunItem, { doc, words, faces }: Page, ink: Ink): void {
  const runs = setRuns(item, words);
  const widthOf = ({ run, words: said }: (typeof runs)[number]): number =>
    words.measure(said, run.size, run.weight);
  const whole = runs.reduce((sum, run) => sum + widthOf(run), 0);
  let x = item.at[0] - ANCHORED[item.anchor] * whole;
  for (const { run, words: said } of runs) {
    const size = run.size * SIZE_SHARE;
    for (const { text, face } of faces.pieces(said)) {
      face.set(doc, text, [x, item.at[1]], size, run.weight, ink);
      x += face.width(text, run.weight) * size;
    }
  }
}

const ANCHORED = { start: 0, middle: 0.5, end: 1 } as const;
