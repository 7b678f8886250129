import type { AlternativeHang, HangAlternative } from "../../plan/alternative-types.ts";
import type { Camp } from "../../plan/camp.ts";
import { radians } from "../../quantity/angle.ts";
import type { CampPlace, CampPlaces } from "../camp-places-types.ts";
import type { DealtKit } from "../dealt-kit.ts";
import { fitClasses } from "../fit-classes.ts";
import { HangDesk } from "../hang-desk.ts";
import { pullLimits } from "../pull-limits.ts";
import { refusedFindings } from "../refused-hang.ts";

/** How a kit would hang at a place; or why it would not. */
export function tryHang(
  camp: Camp,
  ground: CampPlaces,
  place: CampPlace,
  kit: DealtKit,
): Pick<HangAlternative, "hung" | "because"> {
  const [fit] = fitClasses([kit], camp);
  if (fit === undefined) return { because: [] };
  const desk = new HangDesk([place], [fit], pullLimits({ ...ground, places: [place] }, camp.rules));
  const outcome = desk.hangOf(0, 0);
  if (!outcome.ok) {
    const { refusals } = outcome;
    return { because: refusedFindings({ trees: treesOf(ground, place), kit, limits: fit.limits, refusals }) };
  }
  const { head, foot, seatHeightM } = outcome.value;
  const hung: AlternativeHang = {
    angle: radians((head.angle + foot.angle) / 2),
    headStrapLengthM: head.strapLengthM,
    footStrapLengthM: foot.strapLengthM,
    seatHeightM,
    webbingM: Math.max(head.webbingM, foot.webbingM),
  };
  return { hung, because: [] };
}

export function treesOf({ anchors }: CampPlaces, { first, second }: CampPlace): readonly [string, string] {
  return [anchors[first]?.id ?? "", anchors[second]?.id ?? ""];
}
