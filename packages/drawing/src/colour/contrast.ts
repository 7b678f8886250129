/** Red, green and blue, each 0 to 1. */
export type Rgb = readonly [red: number, green: number, blue: number];

/** A colour written "#13201E". */
export function rgbOf(hex: string): Rgb {
  const channel = (at: number): number => parseInt(hex.slice(at, at + 2), 16) / 255;
  return [channel(1), channel(3), channel(5)];
}

/** Light as the screen sends it, from the numbers of sRGB. */
export function linear([red, green, blue]: Rgb): Rgb {
  const undo = (value: number): number =>
    value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  return [undo(red), undo(green), undo(blue)];
}

/**
 * How far apart in light two colours are.
 *
 *   (lighter + 0.05) / (darker + 0.05), of relative luminance
 *
 * Shapes   two colours "#RRGGBB" → one ratio, 1 to 21
 * Error    exact by definition
 * Source   wcag-2-2
 */
export function contrastRatio(one: string, other: string): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

function luminance(hex: string): number {
  const [red, green, blue] = linear(rgbOf(hex));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
