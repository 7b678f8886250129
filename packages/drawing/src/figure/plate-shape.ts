import type { Verdict } from "@nightspan/core";
import type { ColourToken } from "../colour/tokens.ts";
import type { XY } from "../scene/scene.ts";

/**
 * Number plates: square and inked where no rule is broken, pointed and yellow for look again, square in the
 * colour of refusal with a cut corner for do not hang. The three outlines differ, so colour is never needed.
 */
export const PLATE_PAINT: Readonly<
  Record<Verdict, { readonly fill: ColourToken; readonly stroke: ColourToken; readonly ink: ColourToken }>
> = {
  clear: { fill: "ink", stroke: "paper", ink: "on-action" },
  "look-again": { fill: "look", stroke: "ink", ink: "look-ink" },
  "do-not-hang": { fill: "no", stroke: "ink", ink: "on-action" },
};

export function plateOutline(verdict: Verdict, [x, y]: XY, width: number, height: number): readonly XY[] {
  const [w, h] = [width / 2, height / 2];
  if (verdict === "look-again") {
    const point = h * 0.62;
    return [
      [x - w - point, y],
      [x - w, y - h],
      [x + w, y - h],
      [x + w + point, y],
      [x + w, y + h],
      [x - w, y + h],
    ];
  }
  const bite = verdict === "do-not-hang" ? h * 0.5 : 0;
  return [
    [x - w, y - h],
    [x + w - bite, y - h],
    [x + w, y - h + bite],
    [x + w, y + h],
    [x - w + bite, y + h],
    [x - w, y + h - bite],
  ];
}
