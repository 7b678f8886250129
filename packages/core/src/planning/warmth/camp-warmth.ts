import { worstFirst, worstVerdict, type Finding } from "../../outcome/finding.ts";
import type { Camp, DefaultUsed, Sleeper } from "../../plan/camp.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import type { KitItem, UnderInsulation } from "../../plan/kit.ts";
import type { NightClock } from "../../plan/night-types.ts";
import type { PlannedBerth } from "../../plan/plan.ts";
import type { DealtKit } from "../dealt-kit.ts";
import { byCodeUnit } from "../order.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";
import { berthWarmth, type YouthCare } from "./berth-warmth.ts";
import { overM2KPerW, underM2KPerW } from "./kit-halves.ts";
import { nightAirs } from "./night-airs.ts";
import { warmthDefaults } from "./warmth-defaults.ts";
import { spareUnderFinding, warmthFindings } from "./warmth-findings.ts";
import { isYoung, warmKit } from "./warmth-margin.ts";

export interface CampWarmthInput {
  readonly camp: Camp;
  readonly berths: readonly PlannedBerth[];
  /** What each sleeper was dealt. */
  readonly dealt: readonly DealtKit[];
  readonly clock?: NightClock;
}

export interface CampWarmth {
  /** The berths with their warmth and its findings, or as they were where nothing is known. */
  readonly berths: readonly PlannedBerth[];
  readonly findings: readonly Finding[];
  readonly defaultsUsed: readonly DefaultUsed[];
  /** Whether the night is known, and the store lists something under and something over whose warmth is known. */
  readonly checked: boolean;
}

/** Warmth of all berths of a plan, spares and who looks in with it. */
export function campWarmth({ camp, berths, dealt, clock }: CampWarmthInput): CampWarmth {
  const { night, kit } = camp;
  if (night === undefined || berths.length === 0 || !isKnown(kit))
    return { berths, findings: [], defaultsUsed: [], checked: false };
  const airs = nightAirs(camp, night, clock);
  const bySleeper = new Map(dealt.map((one) => [one.sleeper.id, one]));
  const spares = spareUnders(kit, dealt);
  const lying = berths.flatMap(({ sleeper }) => bySleeper.get(sleeper) ?? []);
  const young = lying.filter((one) => isYoung(one.sleeper));
  const careOf = new Map(
    young.map(({ sleeper }, at) => [sleeper.id, care(camp.sleepers, sleeper, spares, at)]),
  );
  const warmed = berths.map((berth) => {
    const own = bySleeper.get(berth.sleeper);
    if (own === undefined) return berth;
    const { under, over, tarp, hammock, sleeper } = own;
    const lain = warmKit(sleeper, { under, over, tarp, hammock });
    const judged = berthWarmth(sleeper, lain, airs, careOf.get(sleeper.id) ?? {});
    const findings = [...berth.findings, ...warmthFindings(berth.id, judged)].sort(worstFirst);
    const verdict = worstVerdict(findings.map((finding) => finding.verdict));
    return { ...berth, warmth: judged.warmth, findings, verdict };
  });
  return {
    berths: warmed,
    findings: [spareUnderFinding(spares.length, camp.sleepers.length)],
    defaultsUsed: warmthDefaults(lying),
    checked: true,
  };
}

function isKnown(kit: readonly KitItem[]): boolean {
  const under = kit.some((item) => item.kind === "under" && underM2KPerW(item) !== undefined);
  return under && kit.some((item) => item.kind === "over" && overM2KPerW(item) !== undefined);
}

/** Under layers in use that nobody was dealt, the warmest first, one entry a piece. */
function spareUnders(kit: readonly KitItem[], dealt: readonly DealtKit[]): readonly UnderInsulation[] {
  const given = (id: string) => dealt.filter(({ under }) => under?.id === id).length;
  return kit
    .flatMap((item) => (item.kind === "under" ? [item] : []))
    .sort((a, b) => (underM2KPerW(b) ?? 0) - (underM2KPerW(a) ?? 0) || byCodeUnit(a.id, b.id))
    .flatMap((item) => Array.from({ length: Math.max(0, piecesInUse(item) - given(item.id)) }, () => item));
}

/** One spare serves six; who looks in is grown: of the same group and leading, where there is such a one. */
function care(
  sleepers: readonly Sleeper[],
  child: Sleeper,
  spares: readonly UnderInsulation[],
  at: number,
): YouthCare {
  const spare = spares[Math.floor(at / DEFAULTS["warmth.sleepers_per_spare"].value)];
  const [grown] = sleepers
    .filter(
      ({ id, ageYears, leads }) =>
        id !== child.id && (ageYears === undefined ? leads : ageYears >= ADULT_YEARS),
    )
    .sort((a, b) => nearness(b, child) - nearness(a, child) || byCodeUnit(a.id, b.id));
  return {
    ...(spare === undefined ? {} : { spare: spare.id }),
    ...(grown === undefined ? {} : { checkedBy: grown.id }),
  };
}

function nearness(grown: Sleeper, child: Sleeper): number {
  return Number(grown.leads) + (grown.group !== undefined && grown.group === child.group ? 2 : 0);
}

/** Age of an adult who may look after others. Source: house-convention. */
const ADULT_YEARS = 18;
