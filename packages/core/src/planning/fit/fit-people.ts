import type { Camp, Sleeper } from "../../plan/camp.ts";
import type { IssueSlip, PersonFit, SlipLine, SmallThing, StoreFit } from "../../plan/fit-types.ts";
import type { KitItem } from "../../plan/kit.ts";
import type { DealtKind } from "../../plan/store-types.ts";
import type { KitDeal } from "../deal-kit.ts";
import { piecesInUse } from "../store/pieces-in-use.ts";
import type { LineOf } from "../store/store-hands.ts";
import { coldestAirOf } from "../warmth/coldest-air-of.ts";
import type { HammockAir } from "../warmth/tonight-air.ts";
import { fitParts } from "./fit-parts.ts";
import { nextDay } from "./next-day.ts";
import { FIT_GIRTHS_M, fitSpansM } from "./span-reach.ts";

/**
 * People fitted out from the store, where there is no ground: what each takes, what else would do, what would be more than is
 * needed, and the slip to hand over with it.
 *
 * The store is dealt to all at once, so that the first choices are there for everybody; a second choice comes from what is left.
 * In this order: hammock by mass and stature, suspension by a range of spans and girths, tarp by the hammock, under before
 * over by tonight's low, and the small things.
 *
 * Shapes   a camp and its deal → fits in the order of the sleepers
 * Holds    any store
 * Error    that of the deal; second choices are each the best alone
 * Source   kit-dealing, common-practice (handbook/kit.md)
 */
export function fitPeople(camp: Camp, deal: KitDeal): StoreFit {
  const left = leftAfter(camp.kit, deal);
  const free = camp.kit.filter(({ id }) => (left.get(id) ?? 0) > 0);
  const air = coldestAirOf(camp);
  return {
    ...(camp.night === undefined ? {} : { lowK: camp.night.lowK }),
    ...(air === undefined ? {} : { airK: air.airK }),
    spansM: fitSpansM(camp),
    girthsM: FIT_GIRTHS_M,
    people: camp.sleepers.map((sleeper, place) => personFit({ camp, air, deal, free }, sleeper, place)),
  };
}

interface FitAll {
  readonly camp: Camp;
  readonly air: HammockAir | undefined;
  readonly deal: KitDeal;
  readonly free: readonly KitItem[];
}

function personFit({ camp, air, deal, free }: FitAll, sleeper: Sleeper, before: number): PersonFit {
  const items = deal.dealing?.dealt.find((one) => one.sleeper === sleeper.id)?.items ?? [];
  const lineOf = <K extends DealtKind>(kind: K): LineOf<K> | undefined => {
    const isKind = (line: KitItem): line is LineOf<K> => line.kind === kind;
    const id = items.find((item) => item.kind === kind)?.item;
    return camp.kit.filter(isKind).find((line) => line.id === id);
  };
  const [hammock, suspension, tarp] = [lineOf("hammock"), lineOf("suspension"), lineOf("tarp")];
  const [under, over] = [lineOf("under"), lineOf("over")];
  const held = {
    ...(hammock === undefined ? {} : { hammock }),
    ...(suspension === undefined ? {} : { suspension }),
    ...(tarp === undefined ? {} : { tarp }),
    ...(under === undefined ? {} : { under }),
    ...(over === undefined ? {} : { over }),
    pinned: new Set(items.flatMap(({ kind, pinned }) => (pinned ? [kind] : []))),
  };
  const numberOf = (kind: DealtKind) => items.find((item) => item.kind === kind)?.number;
  const kit = deal.dealt.find((one) => one.sleeper.id === sleeper.id);
  const parts = fitParts({ camp, air, sleeper, held, kit, free, numberOf });
  const small = smallThings(camp.kit, before, tarp !== undefined, hammock?.ridgelineM === undefined);
  const dealt = items.map(({ kind, item, number }) => ({ kind, item, number }));
  return { sleeper: sleeper.id, parts, small, slip: issueSlip(camp, sleeper, dealt, small) };
}

type Small = PersonFit["small"][number];

/** Drip lines always, a light always; lines and pegs of a tarp with it. Named are those that go round to whoever comes `before` too. */
function smallThings(
  kit: readonly KitItem[],
  before: number,
  hasTarp: boolean,
  lacksRidgeline: boolean,
): Small[] {
  const lineOf = (kind: KitItem["kind"], each: number) =>
    kit.find((line) => line.kind === kind && piecesInUse(line) >= each * (before + 1))?.id;
  const thing = (what: SmallThing, count: number, item?: string): Small => ({
    what,
    count,
    ...(item === undefined ? {} : { item }),
  });
  return [
    thing("drip-line", hasTarp ? 4 : 2),
    ...(lacksRidgeline ? [thing("ridgeline", 1)] : []),
    ...(hasTarp ? [thing("hitch-loop", 2), thing("guy-line", 4), thing("peg", 4, lineOf("peg", 4))] : []),
    thing("light", 1, lineOf("light", 1)),
  ];
}

function issueSlip(
  { kit, date }: Camp,
  { id }: Sleeper,
  dealt: readonly { readonly kind: DealtKind; readonly item: string; readonly number: string | undefined }[],
  small: readonly Small[],
): IssueSlip {
  const items = dealt.map(({ kind, item, number }): SlipLine => {
    const looks = kit.find((line) => line.id === item)?.inspections ?? [];
    const last = looks.findLast((look) => look.number === undefined || look.number === number);
    return {
      kind,
      count: 1,
      item,
      ...(number === undefined ? {} : { number }),
      ...(last === undefined ? {} : { lastInspected: { by: last.by, on: last.on } }),
    };
  });
  const things = small.map(({ what, ...rest }): SlipLine => ({ kind: what, ...rest }));
  const backOn = date === undefined ? undefined : nextDay(date);
  return {
    sleeper: id,
    items: [...items, ...things],
    ...(date === undefined ? {} : { outOn: date }),
    ...(backOn === undefined ? {} : { backOn }),
  };
}

/** Pieces of each line that nobody was dealt and nobody put by. */
function leftAfter(kit: readonly KitItem[], { dealing }: KitDeal): Map<string, number> {
  const left = new Map(kit.map((line) => [line.id, piecesInUse(line)]));
  const take = (id: string, count: number) => left.set(id, (left.get(id) ?? 0) - count);
  dealing?.dealt.forEach(({ items }) => items.forEach(({ item }) => take(item, 1)));
  dealing?.spareUnder.forEach(({ item, count }) => take(item, count));
  return left;
}
