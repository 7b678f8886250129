import { bagLabel } from "../../heat/bag-label.ts";
import { BARE_M2K_PER_W, type HalvesInput } from "../../heat/halves.ts";
import { ICE_K } from "../../heat/heat-units.ts";
import { layerM2KPerW } from "../../heat/layer-label.ts";
import { loftedM2KPerW, pressedM2KPerW } from "../../heat/pressed-insulation.ts";
import { underLayer, type UnderPlace } from "../../heat/under-layer.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { Hammock, OverInsulation, Tarp, UnderInsulation } from "../../plan/kit.ts";
import type { HammockAir } from "./tonight-air.ts";

/** What somebody lies between tonight; whatever is absent is not there. */
export interface WarmKit {
  readonly under?: UnderInsulation;
  readonly over?: OverInsulation;
  readonly tarp?: Tarp;
  readonly hammock?: Pick<Hammock, "layers">;
  readonly hat?: boolean;
}

/** The two halves of a sleeper in this kit and air. */
export function kitHalves(kit: WarmKit, air: HammockAir): HalvesInput {
  const { windMS, humidityRatio } = air;
  const seenK = kit.tarp === undefined ? air.openK : air.tarpK;
  return {
    night: { airK: balancedK(air.airK), windMS, humidityRatio, radiantK: Math.min(seenK, WARMEST_K) },
    top: {
      insulationM2KPerW: kit.over === undefined ? BARE_M2K_PER_W : Math.max(BARE_M2K_PER_W, overOf(kit.over)),
      permeabilityMS: kit.over?.permeabilityMS ?? OVER_PERMEABILITY_MS,
    },
    bottom: bottomOf(kit),
    topShareRatio: DEFAULTS["warmth.top_share"].value,
    head: headOf(kit),
  };
}

/** Air as the balance takes it: warmer nights than its range are as warm as its edge, where nobody is cold [K]. */
export function balancedK(airK: number): number {
  return Math.min(Math.max(airK, COLDEST_K), WARMEST_K);
}

const COLDEST_K = ICE_K - 60;
const WARMEST_K = ICE_K + 30;

/** Insulation of the upper side of a bag or quilt [m²K/W]; nothing where nobody knows. */
export function overM2KPerW(over: OverInsulation): number | undefined {
  const { insulationM2KPerW, loftM, fill = "down" } = over;
  const lofted = insulationM2KPerW ?? labelled(over);
  const known = lofted ?? (loftM === undefined ? undefined : loftedM2KPerW(loftM, fill));
  return known === undefined ? undefined : Math.min(MOST_M2K_PER_W, known * (over.loftLeftRatio ?? 1));
}

function labelled({ comfortK, limitK, fill: filling = "down" }: OverInsulation): number | undefined {
  const label =
    comfortK === undefined
      ? { labelK: limitK, of: "limit" as const }
      : { labelK: comfortK, of: "comfort" as const };
  if (label.labelK === undefined) return undefined;
  const found = bagLabel({ labelK: label.labelK, of: label.of, filling });
  return found.ok ? found.value.topM2KPerW : undefined;
}

/** Insulation of an under layer by itself [m²K/W]; nothing where nobody knows. */
export function underM2KPerW(under: UnderInsulation): number | undefined {
  const { insulationM2KPerW, limitK } = under;
  const known = insulationM2KPerW ?? (limitK === undefined ? undefined : layerM2KPerW(limitK, "limit"));
  return known === undefined ? undefined : Math.min(MOST_M2K_PER_W, known * (under.loftLeftRatio ?? 1));
}

/** A mat lies between the layers of a double hammock, else on the cloth; an underblanket hangs. */
export function placeOf(under: UnderInsulation, hammock: WarmKit["hammock"]): UnderPlace {
  if (under.placement !== undefined) return under.placement;
  if (under.form === "mat") return (hammock?.layers ?? 1) > 1 ? "between-layers" : "on-cloth";
  if (under.form === "underblanket" || under.insulationM2KPerW === undefined) return "hung-below";
  return "between-layers";
}

function bottomOf({ under, over, hammock }: WarmKit): HalvesInput["bottom"] {
  const pressed = over?.form === "quilt" || over === undefined ? CLOTHES_M2K_PER_W : pressedOf(over);
  const nothing = { insulationM2KPerW: 0, coveredRatio: 1, gapRatio: 0, permeabilityMS: 0 };
  if (under === undefined || underOf(under) === 0)
    return underLayer({ ...nothing, place: "hung-below", pressedM2KPerW: pressed });
  const place = placeOf(under, hammock);
  return underLayer({
    insulationM2KPerW: underOf(under),
    coveredRatio: under.coveredRatio ?? (place === "hung-below" ? UNDERBLANKET_COVERS : MAT_COVERS),
    gapRatio: under.gapRatio ?? DEFAULTS["kit[].gap"].value,
    permeabilityMS: under.permeabilityMS ?? UNDER_PERMEABILITY_MS,
    place,
    pressedM2KPerW: pressed,
  });
}

function pressedOf(over: OverInsulation): number {
  return Math.max(CLOTHES_M2K_PER_W, pressedM2KPerW(overOf(over), over.fill ?? "down"));
}

function headOf({ over, hat }: WarmKit): NonNullable<HalvesInput["head"]> {
  if (over !== undefined && over.form !== "quilt") return "hood";
  return hat === false ? "bare" : "hat";
}

/** The same item is asked for every sleeper it might go to; its insulation never changes. */
const OVERS = new WeakMap<OverInsulation, number>();
const UNDERS = new WeakMap<UnderInsulation, number>();

/** An unknown one counts for nothing. */
function overOf(over: OverInsulation): number {
  const kept = OVERS.get(over) ?? overM2KPerW(over) ?? 0;
  OVERS.set(over, kept);
  return kept;
}

function underOf(under: UnderInsulation): number {
  const kept = UNDERS.get(under) ?? underM2KPerW(under) ?? 0;
  UNDERS.set(under, kept);
  return kept;
}

const UNDERBLANKET_COVERS = DEFAULTS["kit[].covered_underblanket"].value;
const MAT_COVERS = DEFAULTS["kit[].covered_mat"].value;
const OVER_PERMEABILITY_MS = DEFAULTS["kit[].permeability_over"].value / 1000;
const UNDER_PERMEABILITY_MS = DEFAULTS["kit[].permeability_under"].value / 1000;

/** Sleeping clothes pressed between back and cloth [m²K/W]. Source: common-practice. */
const CLOTHES_M2K_PER_W = 0.05;

/** More than the balance is made for is taken as its most [m²K/W]. */
const MOST_M2K_PER_W = 4.5;
