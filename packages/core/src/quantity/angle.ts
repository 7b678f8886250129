declare const radiansBrand: unique symbol;

/** An angle in radians; made only by the functions of this file. */
export type Radians = number & { readonly [radiansBrand]: true };

export function radians(value: number): Radians {
  return value as Radians;
}

export function degrees(value: number): Radians {
  return radians((value * Math.PI) / 180);
}

export function inDegrees(angle: Radians): number {
  return (angle * 180) / Math.PI;
}
