import { plainLabels, plainMeasure, type Labels, type Measure } from "@nightspan/drawing";

/** Words and units for drawings, in British English and SI. */
export const labels: Labels = plainLabels;

/**
 * The width of a text in the drawings' type, sign by sign as a reader sees them: a family or a flag is one
 * sign, however many code points it is made of.
 */
export const measure: Measure = (text, size, weight) => {
  if (PLAIN.test(text)) return plainMeasure(text, size, weight);
  let width = 0;
  for (const { segment } of SIGNS.segment(text)) {
    width += PICTURE.test(segment) ? size * PICTURE_WIDTH : plainMeasure(segment, size, weight);
  }
  return width;
};

/** Letters that are one sign each. */
const PLAIN = /^[ -~\u00a0\u00b0-\u00ff]*$/;
const SIGNS = new Intl.Segmenter("en", { granularity: "grapheme" });
const PICTURE = /\p{Extended_Pictographic}|\p{Regional_Indicator}/u;
/** Width of a picture sign over the size of the type, broad rather than narrow. */
const PICTURE_WIDTH = 1.3;
