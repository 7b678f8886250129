import { byRule, compare, kept, type Finding } from "../../outcome/finding.ts";
import type { Tree } from "../../site/tree.ts";
import { trunk } from "../../statics/trunk.ts";
import { findNamedWood, findWood, WEAKEST_WOOD } from "../../statics/wood-strength.ts";
import { greatestSum, type Vector } from "../greatest-sum.ts";
import type { TrunkPull } from "../trunk-pulls.ts";
import { ENDS, type BerthCase, type BerthEnd, type End } from "./berth-case.ts";
import { ONE_IN_TWENTY, SITTING_DOWN_HARD, WOOD_VARIES } from "./strength-figures.ts";

/**
 * What the pulls do to the two trunks: bending at the ground and pressure on the bark. Behind the house rule for
 * trunk and strap, which goes first: what is found here can make a verdict worse and never better. Nothing of a
 * trunk that nobody measured.
 */
export function trunkFindings(berth: BerthCase): Finding[] {
  return ENDS.flatMap((end) => {
    const isMeasured = berth[end].tree !== undefined || !berth.place.dbhAssumed;
    return isMeasured ? [...bending(berth, end), ...bark(berth, end)] : [];
  });
}

/**
 * Bending at the ground under all that pulls at this trunk, against what 19 of 20 sound pieces of its green wood bear
 * when everybody on it sits down hard. A species that is not named is taken as the weakest listed, one that
 * is not listed as the weakest of its kind or of all; either is told.
 */
function bending({ id, kit, trunks, ...berth }: BerthCase, end: End): Finding[] {
  const { species, isKnown } = woodOf(berth[end].tree);
  const momentNm = greatestMomentNm(trunks[end]);
  const { strapWidthM } = kit.suspension;
  const found = trunk({ species, dbhM: berth[end].dbhM, pullN: momentNm, heightM: 1, strapWidthM });
  if (!found.ok) return [];
  const { bendingPa, strengthPa } = found.value;
  const others = [...new Set(trunks[end].map((pull) => pull.berth))].filter((other) => other !== id);
  const finding = compare({
    rule: "tree.bending",
    source: "wood-handbook",
    subject: `tree/${berth[end].id}`,
    sense: "at-most",
    demand: bendingPa,
    limit: bendingLimitPa(strengthPa),
    unit: "Pa",
    depth: "why",
    ...(others.length === 0 ? {} : { about: others }),
  });
  return isKnown ? [finding] : [finding, speciesUnknown(berth[end])];
}

interface KnownWood {
  readonly species: string;
  readonly isKnown: boolean;
}

function woodOf(tree: Tree | undefined): KnownWood {
  const species = tree?.species;
  if (species === undefined || findWood(species) === undefined) return { species: WEAKEST, isKnown: false };
  return { species, isKnown: findNamedWood(species) !== undefined };
}

const WEAKEST = WEAKEST_WOOD.english[0] ?? WEAKEST_WOOD.scientific;

/** What a trunk's wood may be bent to when still [Pa]. */
function bendingLimitPa(strengthPa: number): number {
  return (strengthPa * (1 - ONE_IN_TWENTY * WOOD_VARIES)) / SITTING_DOWN_HARD;
}

/** The bending at the ground at which a berth alone comes to the limit of a trunk, σ π d³ / 32 [N m]. */
export function mostMomentNm(tree: Tree | undefined, dbhM: number): number {
  const wood = findWood(woodOf(tree).species) ?? WEAKEST_WOOD;
  return (bendingLimitPa(wood.strengthPa) * Math.PI * dbhM ** 3) / 32;
}

/** Of the species' own strength nothing is known, and nothing is needed: the weakest listed, of its kind or of all, stands in. */
function speciesUnknown({ id, tree }: BerthEnd): Finding {
  const species = tree?.species;
  return byRule(
    {
      rule: "tree.species-unknown",
      source: "wood-handbook",
      subject: `tree/${id}`,
      sense: "at-least",
      demand: 0,
      limit: 0,
      unit: "1",
      depth: "why",
      ...(species === undefined ? {} : { about: [species] }),
    },
    "clear",
  );
}

/**
 * The greatest bending at the ground that any of the berths at one trunk can make together [N m]; those whose
 * direction nobody knows are taken to pull the same way as the others.
 */
export function greatestMomentNm(pulls: readonly TrunkPull[]): number {
  const vectors: Vector[] = [];
  let anyWayNm = 0;
  for (const { sidewaysN, heightM, towardsRad } of pulls) {
    const momentNm = sidewaysN * heightM;
    if (towardsRad === undefined) anyWayNm += momentNm;
    else vectors.push([momentNm * settled(Math.sin(towardsRad)), momentNm * settled(Math.cos(towardsRad))]);
  }
  return anyWayNm + greatestSum(vectors);
}

/** To 1e-7, so that the same map gives the same verdict on every machine. */
function settled(value: number): number {
  return Math.round(value * 1e7) / 1e7;
}

/**
 * Pressure of this berth's strap on the bark, twice the mean at the running side of one through its own eye. Nobody
 * publishes a limit for bark, so it is held against what the least strap on the least trunk of the house rules would
 * press under the same pull.
 */
function bark({ kit, camp, hang, ...berth }: BerthCase, end: End): Finding[] {
  const { strapWidthM, throughOwnEye } = kit.suspension;
  const { sidewaysN, strapHeightM } = hang[end];
  const pull = { species: WEAKEST, pullN: sidewaysN, heightM: strapHeightM };
  const found = trunk({ ...pull, dbhM: berth[end].dbhM, strapWidthM });
  const { trunkMinM, strapWidthMinM } = camp.rules;
  const house = trunk({ ...pull, dbhM: trunkMinM.value, strapWidthM: strapWidthMinM.value });
  if (!found.ok || !house.ok) return [];
  return [
    kept(
      {
        rule: "tree.bark-pressure",
        source: "common-practice",
        subject: `tree/${berth[end].id}`,
        sense: "at-most",
        demand: throughOwnEye === true ? found.value.barkPeakPa : found.value.barkPa,
        limit: house.value.barkPa,
        unit: "Pa",
        depth: "why",
      },
      "look-again",
    ),
  ];
}
