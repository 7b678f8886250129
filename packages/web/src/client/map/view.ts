/** What part of the ground is looked at: the middle of the window [m], east and north, and the scale. */
export interface View {
  readonly centreM: readonly [xM: number, yM: number];
  readonly pxPerM: number;
}

/** A point of the window, from its middle, right and down [px]. */
export type FromMiddle = readonly [x: number, y: number];

export const LEAST_PX_PER_M = 1.5;
export const MOST_PX_PER_M = 120;

/** The view after the ground was pulled along with the finger. */
export function panned({ centreM: [x, y], pxPerM }: View, [right, down]: FromMiddle): View {
  return { centreM: [x - right / pxPerM, y + down / pxPerM], pxPerM };
}

/** The view after zooming, with the ground under `at` staying where it is. */
export function zoomed(view: View, factor: number, at: FromMiddle = [0, 0]): View {
  const pxPerM = Math.min(MOST_PX_PER_M, Math.max(LEAST_PX_PER_M, view.pxPerM * factor));
  const [x, y] = view.centreM;
  const held = [x + at[0] / view.pxPerM, y - at[1] / view.pxPerM] as const;
  return { centreM: [held[0] - at[0] / pxPerM, held[1] + at[1] / pxPerM], pxPerM };
}

/** The place on the ground under a point of the window [m]. */
export function placeAt({ centreM: [x, y], pxPerM }: View, [right, down]: FromMiddle): View["centreM"] {
  return [x + right / pxPerM, y - down / pxPerM];
}

/** How a picture drawn for one view is to be moved and scaled about its middle to show another. */
export interface Shift {
  readonly right: number;
  readonly down: number;
  readonly scale: number;
}

export function shiftBetween(drawn: View, now: View): Shift {
  const scale = now.pxPerM / drawn.pxPerM;
  return {
    right: (drawn.centreM[0] - now.centreM[0]) * now.pxPerM,
    down: (now.centreM[1] - drawn.centreM[1]) * now.pxPerM,
    scale,
  };
}
