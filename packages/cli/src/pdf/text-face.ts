import { readFileSync } from "node:fs";
import type { create, Font } from "fontkit";
import { hasRightToLeft, type Weight } from "@nightspan/drawing";
import { isBold, seenCodePoints, type Face } from "./face.ts";
import { kept } from "./kept.ts";
import { dejaVuFile } from "./font-files.ts";

/** DejaVu Sans as text of the page, in two weights: it can be searched and copied. */
export function textFace(open: typeof create): Face {
  const files = { regular: dejaVuFile(false), bold: dejaVuFile(true) };
  const fonts = { regular: open(readFileSync(files.regular)), bold: open(readFileSync(files.bold)) };
  const widths = { regular: wordWidths(fonts.regular), bold: wordWidths(fonts.bold) };
  const cut = (weight: Weight) => (isBold(weight) ? "bold" : "regular");
  return {
    covers: (text) =>
      seenCodePoints(text).every(
        (code) => fonts.regular.hasGlyphForCodePoint(code) && fonts.bold.hasGlyphForCodePoint(code),
      ),
    width: (text, weight) => widths[cut(weight)](text),
    set: (doc, text, [x, y], size, weight, { colour, rim }) => {
      doc.font(files[cut(weight)]).fontSize(size);
      if (rim === undefined) doc.fillColor(colour);
      else doc.lineJoin("round").lineWidth(rim).strokeColor(colour);
      doc.text(text, x, y, {
        lineBreak: false,
        // With a list of features the run is laid out whole, so that several Arabic words keep their order; without one
        // each word is laid out once for the whole file.
        ...(hasRightToLeft(text) ? { features: [] } : {}),
        baseline: "alphabetic",
        ...(rim === undefined ? {} : { stroke: true, fill: false }),
      });
    },
  };
}

/** Width of a text over its size, word by word: the face sets no word nearer to its space than another. */
function wordWidths(font: Font): (text: string) => number {
  const word = kept((text) => font.layout(text, []).advanceWidth / font.unitsPerEm);
  const space = word(" ");
  return (text) =>
    text
      .split(" ")
      .reduce((sum, one, index) => sum + (index > 0 ? space : 0) + (one === "" ? 0 : word(one)), 0);
}
