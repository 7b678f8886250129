import type { Camp } from "../plan/camp.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { tarpFootprint } from "../shelter/tarp-footprint.ts";
import type { DealtKit } from "./dealt-kit.ts";

/**
 * The camp whose berths keep the ground that the widest tarp dealt takes with its guys, where that is more than the house's.
 *
 * One width holds for all berths: who lies where is not known before the layout, and a berth that keeps too much is never
 * in another's guys. A smaller tarp would do with less.
 *
 * Shapes   a camp and its deal → the same camp with `rules.tarpHalfWidthM`, absent where nobody is dealt a tarp
 * Units    metres
 * Error    never too little for sides at 30° and steeper; a porch may take half a metre more
 * Source   tarp-geometry (handbook/layout.md: ground that tarps take)
 */
export function keptForTarps<T extends Pick<Camp, "rules">>(camp: T, dealt: readonly DealtKit[]): T {
  const { tarpHalfWidthM: before, ...rules } = camp.rules;
  const widths = dealt.flatMap(({ tarp }) => (tarp === undefined ? [] : tarpFootprint(tarp).halfWidthM));
  if (widths.length === 0) return before === undefined ? camp : { ...camp, rules };
  const widest: HouseRules = {
    ...rules,
    tarpHalfWidthM: { value: Math.max(...widths), source: "tarp-geometry" },
  };
  return { ...camp, rules: widest };
}
