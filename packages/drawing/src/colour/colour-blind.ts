import type { Rgb } from "./contrast.ts";

export type Sight = "usual" | "protan" | "deutan" | "tritan";

type Matrix = readonly [Rgb, Rgb, Rgb];

/**
 * A colour as somebody sees it who lacks one kind of cone, in linear light.
 *
 * Shapes   linear red, green, blue in and out, clipped to 0 … 1
 * Holds    severity 1.0: the cone is missing
 * Source   machado-2009
 */
export function seen(light: Rgb, sight: Sight): Rgb {
  if (sight === "usual") return light;
  const [red, green, blue] = light;
  const row = ([r, g, b]: Rgb): number => Math.min(1, Math.max(0, r * red + g * green + b * blue));
  const [first, second, third] = MATRICES[sight];
  return [row(first), row(second), row(third)];
}

const MATRICES: Readonly<Record<Exclude<Sight, "usual">, Matrix>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};
