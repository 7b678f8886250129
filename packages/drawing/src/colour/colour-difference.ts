import { linear, rgbOf, type Rgb } from "./contrast.ts";
import { seen, type Sight } from "./colour-blind.ts";

/** Lightness, red–green, yellow–blue. */
export type Lab = readonly [lightness: number, a: number, b: number];

/** How different two colours "#RRGGBB" look to somebody, by CIEDE2000. */
export function lookDifference(one: string, other: string, sight: Sight): number {
  return ciede2000(labOf(seen(linear(rgbOf(one)), sight)), labOf(seen(linear(rgbOf(other)), sight)));
}

/** CIELAB of linear light, white D65. Matrix of sRGB: IEC 61966-2-1, from memory. */
export function labOf([red, green, blue]: Rgb): Lab {
  const x = (0.4124564 * red + 0.3575761 * green + 0.1804375 * blue) / 0.95047;
  const y = 0.2126729 * red + 0.7151522 * green + 0.072175 * blue;
  const z = (0.0193339 * red + 0.119192 * green + 0.9503041 * blue) / 1.08883;
  const [fx, fy, fz] = [cubed(x), cubed(y), cubed(z)];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

function cubed(value: number): number {
  const edge = 6 / 29;
  return value > edge ** 3 ? Math.cbrt(value) : value / (3 * edge * edge) + 4 / 29;
}

/**
 * The CIEDE2000 colour difference with all weights 1.
 *
 * Shapes   two colours in CIELAB → one number; 1 is about the least that is seen side by side
 * Error    1e-4 against the published pairs
 * Source   sharma-2005 (colour-difference.checks.json)
 */
export function ciede2000(one: Lab, other: Lab): number {
  const meanChroma = (Math.hypot(one[1], one[2]) + Math.hypot(other[1], other[2])) / 2;
  const stretch = 1.5 - 0.5 * Math.sqrt(share7(meanChroma));
  const [first, second] = [polar(one, stretch), polar(other, stretch)];
  const lightness = (one[0] + other[0]) / 2;
  const chroma = (first.chroma + second.chroma) / 2;
  const grey = first.chroma * second.chroma === 0;
  const turn = grey ? 0 : shortTurn(second.hue - first.hue);
  const hue = grey ? first.hue + second.hue : meanHue(first.hue, second.hue);
  const weightL = 1 + (0.015 * (lightness - 50) ** 2) / Math.sqrt(20 + (lightness - 50) ** 2);
  const weightC = 1 + 0.045 * chroma;
  const weightH = 1 + 0.015 * chroma * hueTerm(hue);
  const dL = (other[0] - one[0]) / weightL;
  const dC = (second.chroma - first.chroma) / weightC;
  const dH = (2 * Math.sqrt(first.chroma * second.chroma) * sin(turn / 2)) / weightH;
  const rotation = -2 * Math.sqrt(share7(chroma)) * sin(60 * Math.exp(-(((hue - 275) / 25) ** 2)));
  return Math.sqrt(dL * dL + dC * dC + dH * dH + rotation * dC * dH);
}

function polar([, a, b]: Lab, stretch: number): { readonly chroma: number; readonly hue: number } {
  const stretched = a * stretch;
  const chroma = Math.hypot(stretched, b);
  const hue = chroma === 0 ? 0 : (Math.atan2(b, stretched) * 180) / Math.PI;
  return { chroma, hue: hue < 0 ? hue + 360 : hue };
}

/** c⁷ / (c⁷ + 25⁷). */
function share7(chroma: number): number {
  const power = chroma ** 7;
  return power / (power + 25 ** 7);
}

function hueTerm(hue: number): number {
  return 1 - 0.17 * cos(hue - 30) + 0.24 * cos(2 * hue) + 0.32 * cos(3 * hue + 6) - 0.2 * cos(4 * hue - 63);
}

function shortTurn(turn: number): number {
  if (turn > 180) return turn - 360;
  return turn < -180 ? turn + 360 : turn;
}

function meanHue(one: number, other: number): number {
  const sum = one + other;
  if (Math.abs(one - other) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

function sin(degrees: number): number {
  return Math.sin((degrees * Math.PI) / 180);
}

function cos(degrees: number): number {
  return Math.cos((degrees * Math.PI) / 180);
}
