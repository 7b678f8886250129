import { byRule, type Finding } from "../outcome/finding.ts";
import type { Camp, Sleeper } from "../plan/camp.ts";
import type { Unplaced } from "../plan/plan.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import type { FitClass } from "./fit-classes.ts";
import type { HangDesk } from "./hang-desk.ts";
import type { KitDeal } from "./deal-kit.ts";
import { blockedFindings, hazardsOf } from "./findings/surroundings.ts";
import { NO_GROUND } from "./no-ground.ts";
import { refusedFindings } from "./refused-hang.ts";
import { whyUnfit } from "./why-unfit.ts";

export interface UnplacedInput {
  readonly deal: KitDeal;
  readonly classes: readonly FitClass[];
  readonly ground: CampPlaces;
  readonly desk: HangDesk;
  readonly placed: ReadonlySet<string>;
  /** Most that can be placed, proven. */
  readonly bound: number;
  readonly camp: Camp;
}

/** Who has no berth, and why: the kit is short, no pair serves them, or others have those that do. */
export function unplacedSleepers(input: UnplacedInput, sleepers: readonly Sleeper[]): Unplaced[] {
  const short = new Map(input.deal.short.map(({ sleeper, because }) => [sleeper.id, because]));
  const classOf = new Map(
    input.classes.flatMap(({ members }, index) => members.map(({ sleeper }) => [sleeper.id, index] as const)),
  );
  return sleepers
    .filter(({ id }) => !input.placed.has(id))
    .map(({ id }) => ({
      sleeper: id,
      because: short.get(id) ?? noBerth(input, id, classOf.get(id)),
    }));
}

function noBerth(input: UnplacedInput, id: string, classIndex: number | undefined): Finding[] {
  const isServed = classIndex !== undefined && anyServes(input, classIndex);
  const nothing = isGroundless(input.camp) ? "no-ground" : "none-serves";
  const [about, demand, limit] = isServed ? ["all-taken", input.bound, input.bound + 1] : [nothing, 0, 1];
  const none = byRule(
    {
      rule: "layout.no-berth",
      source: "layout-search",
      subject: `sleeper/${id}`,
      sense: "at-least",
      demand,
      limit,
      unit: "1",
      about: [about],
    },
    "look-again",
  );
  if (isServed || classIndex === undefined) return [none];
  const unfit = whyUnfit(input.camp, input.ground, `sleeper/${id}`);
  return [none, ...unfit, ...whyBlocked(input, id), ...whyRefused(input, id, classIndex)];
}

/** Neither trees nor pairs are given at all. */
function isGroundless({ ground = NO_GROUND }: Camp): boolean {
  return ground.trees.length === 0 && ground.pairs.length === 0;
}

function anyServes({ desk, ground }: UnplacedInput, classIndex: number): boolean {
  return ground.places.some((_, place) => desk.serves(classIndex, place));
}

function whyBlocked({ camp, ground }: UnplacedInput, id: string): Finding[] {
  if (camp.ground === undefined) return [];
  const hazards = hazardsOf(camp.ground);
  return blockedFindings(`sleeper/${id}`, ground.blocked.slice(0, STRIPS_LOOKED_AT), hazards, camp.rules);
}

/** The first pairs whose hang was refused, each with the limits in its way. */
function whyRefused({ classes, ground, desk }: UnplacedInput, id: string, classIndex: number): Finding[] {
  const fit = classes[classIndex];
  const kit = fit?.members.find(({ sleeper }) => sleeper.id === id);
  if (fit === undefined || kit === undefined) return [];
  return ground.places.slice(0, PAIRS_TOLD).flatMap((place, index) => {
    const outcome = desk.hangOf(classIndex, index);
    if (outcome.ok) return [];
    const { first, second } = place;
    const trees = [ground.anchors[first]?.id ?? "", ground.anchors[second]?.id ?? ""] as const;
    return refusedFindings({ trees, kit, limits: fit.limits, refusals: outcome.refusals });
  });
}

/** Blocked pairs that are looked at for the causes to tell. */
const STRIPS_LOOKED_AT = 200;

/** No more pairs than a person reads. */
const PAIRS_TOLD = 12;
