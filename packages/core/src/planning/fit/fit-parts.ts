import type { Camp, Sleeper } from "../../plan/camp.ts";
import type { FitChoice, FitPart, Overkill } from "../../plan/fit-types.ts";
import type { KitItem } from "../../plan/kit.ts";
import type { DealtKind } from "../../plan/store-types.ts";
import type { DealtKit } from "../dealt-kit.ts";
import { CLOTH_OVER_STATURE_M } from "../assumed-kit.ts";
import { wantedRidgeM } from "../store/deal-hang-kit.ts";
import { tooFew, tooWeakFor } from "../store/kit-shortage.ts";
import type { Holding, LineOf } from "../store/store-hands.ts";
import { tonightMargins } from "../store/tonight-margins.ts";
import { hammockReasons, suspensionReasons, tarpReasons, underReasons } from "./fit-reasons.ts";
import type { Enough, WarmthHalf } from "../../plan/warmth-types.ts";
import type { Finding } from "../../outcome/finding.ts";
import { enoughFinding } from "../warmth/warmth-findings.ts";
import type { HammockAir } from "../warmth/tonight-air.ts";
import { isYoung } from "../warmth/warmth-margin.ts";
import { spanReach } from "./span-reach.ts";

export interface FitInput {
  readonly camp: Camp;
  /** The coldest air of the night; absent without a night. */
  readonly air: HammockAir | undefined;
  readonly sleeper: Sleeper;
  /** What this sleeper was dealt, kind by kind: the first choices. */
  readonly held: Holding;
  /** The whole of it, where it can be hung in. */
  readonly kit: DealtKit | undefined;
  /** Lines with pieces that nobody was dealt. */
  readonly free: readonly KitItem[];
  /** Number of the piece that was dealt, by kind. */
  readonly numberOf: (kind: DealtKind) => string | undefined;
}

/** How one kind is fitted: what speaks for an item, how good it is, what of it is more than is needed. */
interface Fitting<K extends DealtKind> {
  readonly kind: K;
  readonly choiceOf: (line: LineOf<K>) => Omit<FitChoice, "item" | "number">;
  /** The lower the better; Infinity where it does not serve at all. */
  readonly mark: (line: LineOf<K>, choice: Omit<FitChoice, "item" | "number">) => number;
  readonly overkill: (
    line: LineOf<K>,
    choice: Omit<FitChoice, "item" | "number">,
  ) => Omit<Overkill, "item">[];
}

/** Hammock, suspension, tarp, under, over: each fits the first choices of those before it. */
export function fitParts(input: FitInput): FitPart[] {
  return [
    partOf(input, hammocks(input)),
    partOf(input, suspensions(input)),
    partOf(input, tarps(input)),
    partOf(input, unders(input)),
    partOf(input, overs(input)),
  ];
}

function partOf<K extends DealtKind>(input: FitInput, fitting: Fitting<K>): FitPart {
  const { kind, choiceOf, mark, overkill } = fitting;
  const isKind = (line: KitItem): line is LineOf<K> => line.kind === kind;
  const held: { readonly [Kind in DealtKind]?: LineOf<Kind> } = input.held;
  const first: LineOf<K> | undefined = held[kind];
  const others = input.free
    .filter(isKind)
    .filter(({ id }) => id !== first?.id)
    .map((line) => ({ line, choice: choiceOf(line) }))
    .map((one) => ({ ...one, mark: mark(one.line, one.choice) }))
    .filter((one) => one.mark < Infinity)
    .sort((a, b) => a.mark - b.mark);
  const chosen = first === undefined ? [] : [{ line: first, choice: choiceOf(first) }];
  const two = [...chosen, ...others].slice(0, 2);
  const number = input.numberOf(kind);
  return {
    kind,
    choices: two.map(({ line, choice }) => ({
      item: line.id,
      ...(line === first && number !== undefined ? { number } : {}),
      ...choice,
    })),
    overkill: [...chosen, ...others].flatMap(({ line, choice }) =>
      overkill(line, choice).map((more) => ({ item: line.id, ...more })),
    ),
    lacking: two.length > 0 ? [] : lackOf(input, kind),
  };
}

function lackOf({ camp, sleeper, free }: FitInput, kind: DealtKind) {
  const missing = tooFew(kind, 0, 1, `sleeper/${sleeper.id}`);
  const hammocks = free.filter((line) => line.kind === "hammock");
  const isListed = camp.kit.some((line) => line.kind === kind);
  return isListed || kind === "hammock" || kind === "suspension"
    ? [missing, ...(kind === "hammock" ? tooWeakFor(sleeper, hammocks) : [])]
    : [];
}

function hammocks({ sleeper }: FitInput): Fitting<"hammock"> {
  const wantedM = sleeper.statureM + CLOTH_OVER_STATURE_M;
  return {
    kind: "hammock",
    choiceOf: (line) => ({ reasons: hammockReasons(sleeper, line) }),
    mark: ({ maxUserKg, lengthM, massKg }) =>
      sleeper.massKg > (maxUserKg ?? Infinity)
        ? Infinity
        : 100 * Math.max(0, wantedM - lengthM) + (massKg ?? 0),
    overkill: ({ maxUserKg, lengthM }) => [
      ...more("load", "kg", sleeper.massKg, maxUserKg, sleeper.massKg),
      ...more("cloth", "m", wantedM, lengthM, 0.4),
    ],
  };
}

function suspensions({ camp, sleeper, kit }: FitInput): Fitting<"suspension"> {
  const reachOf = (suspension: LineOf<"suspension">) =>
    kit === undefined ? undefined : spanReach(camp, { ...kit, suspension });
  const narrow = ({ strapWidthM }: LineOf<"suspension">) =>
    strapWidthM < camp.rules.strapWidthMinM.value - 1e-9 ? 100 : 0;
  return {
    kind: "suspension",
    choiceOf: (line) => {
      const reach = reachOf(line);
      return { reasons: suspensionReasons(sleeper, line, camp.rules.strapWidthMinM, reach) };
    },
    mark: (line, { reasons }) =>
      narrow(line) +
      reasons
        .filter(({ rule }) => isOfFit(rule))
        .reduce((sum, { demand, limit }) => sum + Math.max(0, limit - demand), 0),
    overkill: () => [],
  };
}

function tarps({ camp, sleeper, held }: FitInput): Fitting<"tarp"> {
  const wantedM = wantedRidgeM(held.hammock, camp.night);
  return {
    kind: "tarp",
    choiceOf: (line) => ({ reasons: tarpReasons(sleeper, line, held.hammock, camp.night) }),
    mark: ({ ridgeM, massKg }) => 100 * Math.max(0, wantedM - ridgeM) + (massKg ?? 0),
    overkill: ({ ridgeM }) => more("cover", "m", wantedM, ridgeM, 0.8),
  };
}

function unders(input: FitInput): Fitting<"under"> {
  const { camp, air, sleeper, held } = input;
  const margins = tonightMargins(air);
  return {
    kind: "under",
    choiceOf: (line) => ({
      reasons: [
        ...underReasons(sleeper, line, held.hammock),
        ...warmthReasons(input, "under", line, margins.enough(sleeper, { ...held, under: line }).under),
      ],
      ...told(camp, sleeper, margins.both(sleeper, { ...held, under: line }).under),
    }),
    mark: (line, { reasons }) => {
      const margin = margins.both(sleeper, { ...held, under: line }).under;
      const amiss = reasons.filter(({ rule, verdict }) => isOfFit(rule) && verdict !== "clear").length;
      return margins.underK(sleeper, held, line) === -Infinity ? Infinity : warmthMark(margin, line) + amiss;
    },
    overkill: (_, { marginK }) => more("warmth", "K", 0, marginK, WARMER_K),
  };
}

function overs(input: FitInput): Fitting<"over"> {
  const { camp, air, sleeper, held } = input;
  const margins = tonightMargins(air);
  return {
    kind: "over",
    choiceOf: (line) => ({
      reasons: warmthReasons(input, "over", line, margins.enough(sleeper, { ...held, over: line }).over),
      ...told(camp, sleeper, margins.both(sleeper, { ...held, over: line }).over),
    }),
    mark: (line) => warmthMark(margins.both(sleeper, { ...held, over: line }).over, line),
    overkill: (_, { marginK }) => more("warmth", "K", 0, marginK, WARMER_K),
  };
}

/** Whether a layer is enough; nothing without a night. */
function warmthReasons(
  { camp, sleeper }: FitInput,
  half: WarmthHalf,
  { id }: KitItem,
  enough: Enough,
): Finding[] {
  return camp.night === undefined ? [] : [enoughFinding(`sleeper/${sleeper.id}`, half, enough, id)];
}

function isOfFit(rule: Finding["rule"]): boolean {
  return rule.startsWith("fit.");
}

/** Short of warmth before mass. */
function warmthMark(marginK: number, { massKg }: { readonly massKg?: number }): number {
  return 100 * Math.max(0, -marginK) + (massKg ?? 0);
}

/** Never under 16: no degree of a balance is valid there. */
function told({ night }: Camp, sleeper: Sleeper, marginK: number): { marginK?: number } {
  return night === undefined || isYoung(sleeper) ? {} : { marginK };
}

function more(
  what: Overkill["in"],
  unit: Overkill["unit"],
  needed: number,
  has: number | undefined,
  by: number,
): Omit<Overkill, "item">[] {
  return has !== undefined && has > needed + by ? [{ in: what, needed, has, unit }] : [];
}

/** Warmer by more than this is carried for nothing [K]. Source: house-convention. */
const WARMER_K = 8;
