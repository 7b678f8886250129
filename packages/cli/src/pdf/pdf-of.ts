import type { Scene, Theme, Words } from "@nightspan/drawing";
import { drawScene } from "./draw-scene.ts";
import type { Faces } from "./faces.ts";
import { dejaVuFile } from "./font-files.ts";

export interface PdfOptions {
  readonly title: string;
  /** The day that stands in the file as the day it was made: the same plan gives the same bytes. */
  readonly day: string | undefined;
  readonly theme: Theme;
  readonly words: Words;
  readonly faces: Faces;
}

/**
 * Scenes as one PDF, a page each: in millimetres at their own size, in pixels fitted to an A4. Tagged, in English, with
 * the letters it needs inside; the same scenes give the same bytes. The library is loaded only when one is made.
 */
export async function pdfOf(scenes: readonly Scene[], options: PdfOptions): Promise<Uint8Array> {
  const { default: PDFDocument } = await import("pdfkit");
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: "1.7",
    tagged: true,
    lang: "en-GB",
    displayTitle: true,
    font: dejaVuFile(false),
    info: { Title: options.title, Creator: "Nightspan", CreationDate: dayOf(options.day) },
  });
  const bytes = collected(doc);
  const root = doc.struct("Document");
  doc.addStructure(root);
  for (const scene of scenes) addScene(scene, doc, root, options);
  root.end();
  doc.end();
  return bytes;
}

function addScene(
  scene: Scene,
  doc: PDFKit.PDFDocument,
  root: PDFKit.PDFStructureElement,
  { theme, words, faces }: PdfOptions,
): void {
  const { size, scale, margins } = paperOf(scene);
  doc.addPage({ size, margin: 0 });
  const section = doc.struct("Sect", { title: words.labels(scene.title), alt: words.labels(scene.desc) });
  root.add(section);
  doc.save().translate(margins[0], margins[1]).scale(scale, scale);
  doc.rect(0, 0, scene.size.width, scene.size.height).clip();
  drawScene(scene, { doc, theme, words, faces, section });
  doc.restore();
  section.end();
}

interface PaperPlace {
  /** Width and height [pt]. */
  readonly size: [number, number];
  /** Points to one unit of the scene. */
  readonly scale: number;
  readonly margins: readonly [left: number, top: number];
}

const POINTS_PER_MM = 72 / 25.4;
/** A4, the shorter side first [mm]. */
const A4_MM = [210, 297] as const;
/** Kept white round a drawing that is fitted to the sheet [mm]; most printers reach no further. */
export const FITTED_EDGE_MM = 8;

function paperOf({ size: { width, height, unit } }: Scene): PaperPlace {
  if (unit === "mm") {
    return { size: [width * POINTS_PER_MM, height * POINTS_PER_MM], scale: POINTS_PER_MM, margins: [0, 0] };
  }
  const [across, down] = width > height ? [A4_MM[1], A4_MM[0]] : A4_MM;
  const free = [across - 2 * FITTED_EDGE_MM, down - 2 * FITTED_EDGE_MM] as const;
  const mmPerPx = Math.min(free[0] / width, free[1] / height);
  return {
    size: [across * POINTS_PER_MM, down * POINTS_PER_MM],
    scale: mmPerPx * POINTS_PER_MM,
    margins: [((across - width * mmPerPx) / 2) * POINTS_PER_MM, FITTED_EDGE_MM * POINTS_PER_MM],
  };
}

/** Noon of the day; of a plan without one, a day that means nothing. */
function dayOf(day: string | undefined): Date {
  return new Date(`${day ?? "2000-01-01"}T12:00:00Z`);
}

function collected(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("error", reject);
    doc.on("end", () => {
      resolve(new Uint8Array(Buffer.concat(chunks)));
    });
  });
}
