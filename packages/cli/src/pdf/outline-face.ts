import { readFileSync } from "node:fs";
import type { create, Font } from "fontkit";
import { isBold, seenCodePoints, type Face } from "./face.ts";
import { fontSlices, isFor } from "./font-files.ts";

export interface OutlineFont {
  /** A package of web fonts in slices. */
  readonly packageName: string;
  /** What a stroke round the letters adds to their stems, over the size: plain and bold. */
  readonly extra: readonly [plain: number, bold: number];
}

interface Part {
  readonly font: Font;
  readonly text: string;
}

/**
 * A web font whose letters are drawn as shapes. Such fonts come compressed and in slices, which no page can carry; their
 * outlines can, and the words stand beside them for readers and for the clipboard.
 */
export function outlineFace({ packageName, extra }: OutlineFont, open: typeof create): Face {
  const slices = fontSlices(packageName);
  const opened = new Map<string, Font>();
  const fontFor = (code: number): Font | undefined => {
    for (const slice of slices) {
      if (!isFor(slice, code)) continue;
      const font = opened.get(slice.path) ?? open(readFileSync(slice.path));
      opened.set(slice.path, font);
      if (font.hasGlyphForCodePoint(code)) return font;
    }
    return undefined;
  };
  return {
    covers: (text) => seenCodePoints(text).every((code) => fontFor(code) !== undefined),
    width: (text) => partsOf(text, fontFor).reduce((sum, part) => sum + widthOver(part), 0),
    set: (doc, text, [x, y], size, weight, { colour, rim = 0 }) => {
      const round = rim + extra[isBold(weight) ? 1 : 0] * size;
      doc.markContent("Span", { actual: text });
      let left = x;
      for (const part of partsOf(text, fontFor)) {
        drawPart(doc, part, [left, y], size, { colour, round });
        left += widthOver(part) * size;
      }
      doc.endMarkedContent();
    },
  };
}

/** The text in stretches of one slice each; letters of no width stay with the one before. */
function partsOf(text: string, fontFor: (code: number) => Font | undefined): Part[] {
  const parts: Part[] = [];
  for (const letter of text) {
    const last = parts.at(-1);
    const code = letter.codePointAt(0) ?? 0;
    const stays = last !== undefined && last.font.hasGlyphForCodePoint(code);
    const font = stays ? last.font : (fontFor(code) ?? last?.font);
    if (font === undefined) continue;
    if (last?.font === font) parts[parts.length - 1] = { font, text: last.text + letter };
    else parts.push({ font, text: letter });
  }
  return parts;
}

function widthOver({ font, text }: Part): number {
  return font.layout(text).advanceWidth / font.unitsPerEm;
}

interface RoundInk {
  readonly colour: string;
  /** Width of the stroke round each letter. */
  readonly round: number;
}

function drawPart(
  doc: PDFKit.PDFDocument,
  { font, text }: Part,
  [x, y]: readonly [number, number],
  size: number,
  { colour, round }: RoundInk,
): void {
  const scale = size / font.unitsPerEm;
  const { glyphs, positions } = font.layout(text);
  let along = 0;
  doc.save().translate(x, y).scale(scale, -scale).lineJoin("round").undash();
  doc
    .lineWidth(round / scale)
    .fillColor(colour)
    .strokeColor(colour);
  glyphs.forEach(({ path }, index) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
    const outline = path.toSVG();
    if (outline !== "") {
      doc
        .save()
        .translate(along + xOffset, yOffset)
        .path(outline);
      if (round > 0) doc.fillAndStroke();
      else doc.fill();
      doc.restore();
    }
    along += xAdvance;
  });
  doc.restore();
}
