import type { Labels, Measure, Weight, Words } from "@nightspan/drawing";
import { isBold } from "./face.ts";
import type { Faces } from "./faces.ts";
import { kept } from "./kept.ts";

/** DejaVu Sans stands larger than the type on screen: sizes are set smaller by this share. */
export const SIZE_SHARE = 0.94;

/** Words of a paper: with names that can be drawn, and as wide as the faces of the paper set them. */
export function pdfWords(labels: Labels, drawable: (text: string) => string, faces: Faces): Words {
  const widthIn = (weight: Weight) =>
    kept((text) => faces.pieces(text).reduce((sum, piece) => sum + piece.face.width(piece.text, weight), 0));
  const [plain, bold] = [widthIn(400), widthIn(700)];
  const measure: Measure = (text, size, weight) => (isBold(weight) ? bold : plain)(text) * size * SIZE_SHARE;
  return { labels: (item) => drawable(labels(item)), measure };
}
