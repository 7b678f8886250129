import { handMarks, type Camp, type Plan } from "@nightspan/core";
import { footServes, headServes, strapServes } from "./card-serves.ts";
import type { BerthFacts } from "../berth/berth-facts.ts";
import { levelWay, markHeightM } from "../berth/berth-words.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { TextItem } from "../scene/text-item.ts";
import { listed } from "./card-words.ts";
import { tarpAction } from "./tarp-line.ts";
import { warmthAction } from "./warmth-line.ts";

/** One numbered line of a card: what to do, then its value or a box to tick. */
export interface CardLine {
  readonly action: TextItem;
  readonly value?: TextItem;
  readonly tick?: true;
  /** In small beneath the action: what still serves. */
  readonly note?: TextItem;
  /** Set larger and bold. */
  readonly strong?: true;
  /** The two strap marks: number, unit and what goes with them, in large type. */
  readonly mark?: { readonly number: TextItem; readonly unit: TextItem; readonly after?: TextItem };
}

/** At most ten lines in the order of doing. Only what was computed; the rest says "not checked". */
export function cardLines(facts: BerthFacts, plan: Plan, camp: Camp): CardLine[] {
  const { hang, verdict } = facts.berth;
  const { headHeightM } = handMarks(facts.berth);
  if (verdict === "do-not-hang") return refusedLines(camp);
  return [
    findLine(facts, camp),
    { action: word("card.look"), tick: true },
    stepsLine(facts),
    ...setterLine(facts),
    {
      action: word("card.head-mark"),
      mark: {
        ...numberAndUnit("length", markHeightM(headHeightM), 2),
        after: { bodyMarkM: headHeightM, statureM: facts.setter.statureM },
      },
      ...headServes(facts),
    },
    footLine(facts),
    barkLine(facts),
    {
      action: word("card.sit", { height: quantity("short-length", roundedTo5Cm(hang.seatHeightM), 0) }),
      tick: true,
    },
    tarpLine(facts, camp),
    kitLine(facts, plan),
  ];
}

/** A berth that must not be hung has no marks to set: whom to tell and where to sleep. */
function refusedLines({ ground }: Camp): CardLine[] {
  const fallback = ground?.fallback;
  const onTheMap = fallback?.at === undefined ? "card.on-the-ground-ask" : "card.on-the-ground-map";
  const where =
    fallback?.note === undefined
      ? word(onTheMap)
      : word("card.on-the-ground", { where: name(fallback.note) });
  return [
    { action: word("card.do-not-hang"), strong: true },
    { action: word("card.tell-leader"), tick: true },
    { action: where, strong: true },
  ];
}

function numberAndUnit(kind: "length" | "short-length", value: number, digits: number) {
  return { number: quantity(kind, value, digits, "number"), unit: quantity(kind, value, digits, "unit") };
}

function roundedTo5Cm(metres: number): number {
  return markHeightM(metres);
}

/** The way from the meeting point in the sleeper's steps, where both places are known. */
function findLine({ berth, sleeper }: BerthFacts, camp: Camp): CardLine {
  const from = camp.ground?.meetingPoint?.at;
  const head = camp.ground?.trees.find(({ id }) => id === berth.headTree);
  if (from === undefined || head === undefined || berth.pair !== undefined)
    return { action: word("card.find-by-tags") };
  const [east, north] = [head.xM - from[0], head.yM - from[1]];
  const steps = quantity("steps", Math.round(Math.hypot(east, north) / sleeper.stepM), 0);
  const bearing = quantity("bearing", (Math.atan2(east, north) + 2 * Math.PI) % (2 * Math.PI), 0);
  return { action: word("card.from-meeting", { steps, bearing }) };
}

function stepsLine({ berth, steps }: BerthFacts): CardLine {
  const told = quantity("steps", steps, 1);
  if (berth.stepItOut) return { action: word("card.step-it-out", { steps: told }), tick: true };
  return { action: word("card.steps-between"), value: told };
}

function setterLine({ setter, sleeper }: BerthFacts): CardLine[] {
  return setter.id === sleeper.id ? [] : [{ action: word("card.set-by", { name: name(setter.name) }) }];
}

function footLine(facts: BerthFacts): CardLine {
  const { berth } = facts;
  const over = handMarks(berth).footOverHeadM;
  const way = levelWay(over);
  const serves = footServes(facts);
  if (way === "same") return { action: word("card.foot-mark"), value: word("card.level"), ...serves };
  const after = word(`card.${way}`);
  return {
    action: word("card.foot-mark"),
    mark: { ...numberAndUnit("short-length", markHeightM(Math.abs(over)), 0), after },
    ...serves,
  };
}

function barkLine(facts: BerthFacts): CardLine {
  const { berth } = facts;
  const serves = strapServes(facts);
  const { headStrapM, footStrapM } = handMarks(berth);
  const [head, foot] = [headStrapM, footStrapM].map(roundedTo5Cm);
  const told = (metres: number | undefined): TextItem => quantity("short-length", metres ?? 0, 0);
  if (head === foot) return { action: word("card.bark-each"), value: told(head), ...serves };
  return {
    action: word("card.bark-two"),
    value: word("card.two-values", {
      first: quantity("short-length", head ?? 0, 0, "number"),
      second: told(foot),
    }),
    ...serves,
  };
}

function tarpLine(facts: BerthFacts, { sleepers }: Camp): CardLine {
  const action = tarpAction(facts);
  if (action !== undefined) return { action, tick: true };
  if (facts.berth.findings.some(({ rule }) => rule === "tarp.none"))
    return { action: word("card.tarp-none"), tick: true };
  const led = sleepers.some(({ leads }) => leads);
  return { action: word(led ? "card.tarp-ask-leader" : "card.tarp-not-checked"), tick: true };
}

function kitLine(facts: BerthFacts, plan: Plan): CardLine {
  const action = warmthAction(facts);
  if (action !== undefined) return { action };
  const { berth } = facts;
  const { hammock, suspension, tarp, under, over } = berth.kit;
  const kit = [hammock, suspension, tarp, under, over].filter((id) => id !== undefined).map(name);
  const checked = plan.checked.includes("warmth");
  if (kit.length === 0) return { action: word("card.warmth-not-checked") };
  return { action: word(checked ? "card.kit" : "card.kit-warmth-not-checked", { kit: listed(kit) }) };
}
