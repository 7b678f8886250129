import type { Camp, Ground } from "../../plan/camp.ts";
import type { ChangeKey } from "../../plan/explanation.ts";
import type { HouseRule, HouseRules } from "../../plan/house-rules.ts";
import type { Tree } from "../../site/tree.ts";
import { NO_GROUND } from "../no-ground.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { byCodeUnit } from "../order.ts";
import type { Change } from "./change.ts";
import { kitChange } from "./kit-change.ts";

/**
 * Every single change that may give more people a berth, most usual first. A change that cannot gain anybody is left
 * out: everybody with kit has a berth already, no tree is doubtful, nothing is blocked by that obstacle.
 *
 * Source   common-practice (handbook/planning.md: what would change it)
 */
export function changesOf(prepared: PreparedCamp, placed: number): readonly Change[] {
  const kit = kitChange(prepared);
  if (placed >= prepared.deal.dealt.length) return kit;
  return [
    ...ruleChanges(prepared),
    ...kit,
    ...reachChange(prepared.camp),
    ...setbackChanges(prepared),
    ...barChanges(prepared.camp),
    ...treeChanges(prepared),
    ...limbChanges(prepared),
  ];
}

function ruleChanges({ camp, ground }: PreparedCamp): Change[] {
  const { rules } = camp;
  const { hammocksPerTree, footprintHalfWidthM, spanMinM, spanMaxM } = rules;
  const more = hammocksPerTree.value + 1;
  const narrower = less(footprintHalfWidthM.value, NARROWER_M);
  const [least, most] = [less(spanMinM.value, WIDER_M), less(spanMaxM.value, -WIDER_M)];
  const withRules = (but: Partial<HouseRules>): Camp => ({ ...camp, rules: { ...rules, ...but } });
  const capacity: Change = {
    ...bare("hammocks-per-tree", withRules({ hammocksPerTree: set(hammocksPerTree, more) })),
    from: [hammocksPerTree.value],
    to: [more],
  };
  const strip: Change = {
    ...bare("strip-width", withRules({ footprintHalfWidthM: set(footprintHalfWidthM, narrower) })),
    from: [2 * footprintHalfWidthM.value],
    to: [2 * narrower],
    unit: "m",
  };
  const span: Change = {
    ...bare("span-window", withRules({ spanMinM: set(spanMinM, least), spanMaxM: set(spanMaxM, most) })),
    from: [spanMinM.value, spanMaxM.value],
    to: [least, most],
    unit: "m",
  };
  const isCrowded = ground.conflicts.length > 0 || ground.blocked.length > 0;
  return [capacity, ...(isCrowded && narrower < footprintHalfWidthM.value ? [strip] : []), span];
}

/** Somebody who reaches higher than anybody in the camp helps with the straps. */
function reachChange(camp: Camp): Change[] {
  const [tallest] = [...camp.sleepers].sort((a, b) => b.reachM - a.reachM || byCodeUnit(a.id, b.id));
  if (tallest === undefined) return [];
  const reachM = less(tallest.reachM, -HIGHER_M);
  const sleepers = camp.sleepers.map((one) => (one === tallest ? { ...one, reachM } : one));
  return [{ ...bare("reach", { ...camp, sleepers }), from: [tallest.reachM], to: [reachM], unit: "m" }];
}

/** What a house bars altogether: spokes at a tree, and species. */
function barChanges(camp: Camp): Change[] {
  const { noSpokes, speciesNot, ...rules } = camp.rules;
  const spokes = { ...camp, rules: { ...rules, ...(speciesNot === undefined ? {} : { speciesNot }) } };
  const species = { ...camp, rules: { ...rules, ...(noSpokes === undefined ? {} : { noSpokes }) } };
  return [
    ...(noSpokes?.value === true ? [bare("spokes", spokes)] : []),
    ...(speciesNot === undefined || speciesNot.value.length === 0
      ? []
      : [{ ...bare("species", species), about: speciesNot.value }]),
  ];
}

/** Each obstacle that is in the way of a pair, the one in the way of most first, at half its set-back. */
function setbackChanges(prepared: PreparedCamp): Change[] {
  const { camp } = prepared;
  return causes(prepared, "obstacle").flatMap((id) => {
    const found = groundOf(camp).obstacles.find((obstacle) => obstacle.id === id);
    if (found === undefined) return [];
    const nearer = { ...found, setbackM: found.setbackM * NEARER_RATIO };
    const obstacles = groundOf(camp).obstacles.map((one) => (one === found ? nearer : one));
    return [
      {
        ...bare("setback", withGround(camp, { obstacles })),
        about: [id],
        from: [found.setbackM],
        to: [nearer.setbackM],
        unit: "m" as const,
        advice: found.kind !== "fire",
      },
    ];
  });
}

/** What only somebody who knows trees may say: thinner trunks, doubtful ones that are sound, dead ones felled. */
function treeChanges({ camp, ground }: PreparedCamp): Change[] {
  const { rules } = camp;
  const { trees } = groundOf(camp);
  const thinner = less(rules.trunkMinM.value, THINNER_M);
  const trunk: Change = {
    ...bare("trunk-least", { ...camp, rules: { ...rules, trunkMinM: set(rules.trunkMinM, thinner) } }),
    from: [rules.trunkMinM.value],
    to: [thinner],
    unit: "m",
    advice: false,
  };
  const doubtful = idsOf(trees.filter(({ condition }) => condition === "doubtful"));
  const sound = trees.map((tree): Tree =>
    doubtful.includes(tree.id) ? { ...tree, condition: "healthy" } : tree,
  );
  const dead = idsOf(trees.filter(({ condition }) => condition === "dead"));
  const isInTheWay = ground.blocked.some(({ by, cause }) => by === "dead-tree" && dead.includes(cause));
  const felled = trees.filter(({ id }) => !dead.includes(id));
  return [
    trunk,
    ...(doubtful.length === 0
      ? []
      : [{ ...bare("doubtful-sound", withGround(camp, { trees: sound })), about: doubtful, advice: false }]),
    ...(isInTheWay
      ? [{ ...bare("dead-gone", withGround(camp, { trees: felled })), about: dead, advice: false }]
      : []),
  ];
}

function limbChanges(prepared: PreparedCamp): Change[] {
  const { camp } = prepared;
  return causes(prepared, "overhead").map((id) => {
    const obstacles = groundOf(camp).obstacles.filter((obstacle) => obstacle.id !== id);
    return { ...bare("limb-down", withGround(camp, { obstacles })), about: [id], advice: false };
  });
}

function bare(change: ChangeKey, camp: Camp): Change {
  return { change, about: [], from: [], to: [], unit: "1", advice: true, camp };
}

function set(rule: HouseRule, value: number): HouseRule {
  return { ...rule, value };
}

/** So much less, never below 0, to a micrometre. */
function less(value: number, by: number): number {
  return Math.max(0, Math.round((value - by) * 1e6) / 1e6);
}

function groundOf({ ground }: Camp): Ground {
  return ground ?? NO_GROUND;
}

function withGround(camp: Camp, but: Partial<Ground>): Camp {
  return { ...camp, ground: { ...groundOf(camp), ...but } };
}

function idsOf(trees: readonly Tree[]): string[] {
  return trees.map(({ id }) => id).sort(byCodeUnit);
}

/** What stands in the way of pairs, that of most pairs first. */
function causes({ ground }: PreparedCamp, kind: "obstacle" | "overhead"): string[] {
  const pairs = new Map<string, number>();
  for (const { by, cause } of ground.blocked) {
    if (by === kind) pairs.set(cause, (pairs.get(cause) ?? 0) + 1);
  }
  return [...pairs].sort(([a, m], [b, n]) => n - m || byCodeUnit(a, b)).map(([cause]) => cause);
}

/** How far each rule gives way. Source: common-practice. */
const NARROWER_M = 0.5;
const WIDER_M = 0.5;
const HIGHER_M = 0.2;
const THINNER_M = 0.05;
const NEARER_RATIO = 0.5;
