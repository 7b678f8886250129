import type { HalvesInput } from "../../heat/halves.ts";
import type { Sleeper } from "../../plan/camp.ts";
import type { WarmthChange, WarmthHalf, WarmthHelp } from "../../plan/warmth-types.ts";
import { weakerOf } from "./half-verdict.ts";
import { kitHalves, placeOf, type WarmKit } from "./kit-halves.ts";
import type { HammockAir } from "./tonight-air.ts";
import { isYoung, marginsOf } from "./warmth-margin.ts";

interface Change {
  readonly key: WarmthChange;
  readonly half: WarmthHalf;
  /** The two halves after it; absent where there is nothing to change. */
  readonly made: HalvesInput | undefined;
}

/** The one change that raises the weaker half most; nothing where none raises it. */
export function bestChange(sleeper: Sleeper, air: HammockAir, kit: WarmKit): WarmthHelp | undefined {
  const now = marginsOf(sleeper, air, kitHalves(kit, air));
  const weaker = weakerOf(now);
  let best: { readonly change: Change; readonly gainK: number } | undefined;
  for (const change of changesOf(kit, air)) {
    if (change.half !== weaker || change.made === undefined) continue;
    const gainK = marginsOf(sleeper, air, change.made)[weaker].marginK - now[weaker].marginK;
    if (gainK > Math.max(LEAST_GAIN_K, best?.gainK ?? 0)) best = { change, gainK };
  }
  if (best === undefined) return undefined;
  const help = { change: best.change.key, half: weaker };
  return isYoung(sleeper) ? help : { ...help, gainK: best.gainK };
}

/** Less is not worth telling [K]. Source: house-convention. */
const LEAST_GAIN_K = 0.3;

function changesOf(kit: WarmKit, air: HammockAir): readonly Change[] {
  return [...underChanges(kit, air), ...overChanges(kit, air)];
}

function underChanges(kit: WarmKit, air: HammockAir): readonly Change[] {
  const { under, hammock } = kit;
  const now = kitHalves(kit, air);
  const hangs = under !== undefined && placeOf(under, hammock) === "hung-below";
  const of = (key: WarmthChange, made: HalvesInput | undefined): Change => ({ key, half: "under", made });
  const refitted = (change: object, isDue: boolean) =>
    under !== undefined && isDue ? kitHalves({ ...kit, under: { ...under, ...change } }, air) : undefined;
  const added = (insulationM2KPerW: number, coveredRatio: number): HalvesInput => ({
    ...now,
    bottom: {
      ...now.bottom,
      insulationM2KPerW: now.bottom.insulationM2KPerW + insulationM2KPerW,
      coveredRatio: under === undefined ? coveredRatio : Math.max(now.bottom.coveredRatio, coveredRatio),
    },
  });
  return [
    of(
      "add-mat",
      under === undefined ? added(MAT.M2KPerW, MAT.covered) : hangs ? added(MAT.besideM2KPerW, 0) : undefined,
    ),
    of("add-underblanket", hangs ? undefined : added(UNDERBLANKET.M2KPerW, 1)),
    of("close-gap", refitted({ gapRatio: 0 }, (under?.gapRatio ?? 0) > 0)),
    of("cover-more", refitted({ coveredRatio: 1 }, now.bottom.coveredRatio < 1)),
    of("wind-side-down", { ...now, bottom: { ...now.bottom, windMS: LEE_SHARE * air.windMS } }),
    of("dry-it", refitted({ loftLeftRatio: 1 }, (under?.loftLeftRatio ?? 1) < 1)),
  ];
}

function overChanges(kit: WarmKit, air: HammockAir): readonly Change[] {
  const { over } = kit;
  const now = kitHalves(kit, air);
  const of = (key: WarmthChange, made: HalvesInput | undefined): Change => ({ key, half: "over", made });
  const top = { ...now.top, insulationM2KPerW: now.top.insulationM2KPerW + QUILT_M2K_PER_W };
  const dry = over !== undefined && (over.loftLeftRatio ?? 1) < 1 ? { ...over, loftLeftRatio: 1 } : undefined;
  return [
    of(over === undefined || over.form === "quilt" ? "add-quilt" : "warmer-bag", { ...now, top }),
    of("wear-hat", now.head === "bare" ? { ...now, head: "hat" } : undefined),
    of("wind-side-down", { ...now, top: { ...now.top, windMS: LEE_SHARE * air.windMS } }),
    of("dry-it", dry === undefined ? undefined : kitHalves({ ...kit, over: dry }, air)),
  ];
}

/** A mat of R value 3 by itself, and what it adds on average above an underblanket. Source: common-practice. */
const MAT = { M2KPerW: 0.53, besideM2KPerW: 0.3, covered: 0.75 };
/** A middling underblanket. Source: common-practice. */
const UNDERBLANKET = { M2KPerW: 0.7 };
/** A summer quilt on top. Source: common-practice. */
const QUILT_M2K_PER_W = 0.4;
/** Wind that is left behind a tarp pitched low to windward; 0.3 to 0.5. Source: common-practice, from memory. */
const LEE_SHARE = 0.4;
