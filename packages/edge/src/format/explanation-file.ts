import type {
  Bottleneck,
  Counterfactual,
  FailedPair,
  Plan,
  PlanRepair,
  RefusedPin,
  Unplaced,
} from "@nightspan/core";
import { alternativesFile } from "./alternatives-file.ts";
import { findingFile } from "./finding-file.ts";
import { present, twoOf } from "./optional.ts";
import type { PlanFile } from "./plan-schema.ts";
import { tidy } from "./tidy.ts";

/** The parts of the plan file that explain it, where they were worked out. */
export function explanationFile({ counterfactuals, bottleneck, pinsRefused }: Plan) {
  return present({
    counterfactuals: counterfactuals?.map(counterfactualFile),
    bottleneck: bottleneck === undefined ? undefined : bottleneckFile(bottleneck),
    pins_refused: pinsRefused?.map(refusedPinFile),
  });
}

type FileOf<K extends keyof PlanFile> = NonNullable<PlanFile[K]>;

export function unplacedFile(one: Unplaced): FileOf<"unplaced">[number] {
  return present({
    sleeper: one.sleeper,
    because: one.because.map(findingFile),
    pairs: one.pairs?.map(failedPairFile),
    pairs_left: one.pairsLeft,
    alternatives: one.alternatives?.map(alternativesFile),
  });
}

export function repairFile({ moved, fewest, fresh, freshMoved }: PlanRepair): FileOf<"repair"> {
  const { placed, cost } = fresh;
  return { moved: [...moved], fewest, fresh: { moved: [...freshMoved], placed, cost: tidy(cost) } };
}

function counterfactualFile(told: Counterfactual): FileOf<"counterfactuals">[number] {
  const { change, about, from, to, unit, placed, gained, proven, advice } = told;
  const isMeasured = to.length > 0;
  return present({
    change,
    about: about.length > 0 ? [...about] : undefined,
    from: isMeasured ? from.map(tidy) : undefined,
    to: isMeasured ? to.map(tidy) : undefined,
    unit: isMeasured ? unit : undefined,
    placed,
    gained,
    proven,
    advice,
  });
}

function bottleneckFile({ trees, most, knots }: Bottleneck): FileOf<"bottleneck"> {
  return {
    trees: [...trees],
    most,
    knots: knots.map((knot) => ({
      trees: [...knot.trees],
      pairs: knot.pairs.map(([a, b]) => [a, b]),
      most: knot.most,
      why: knot.why,
    })),
  };
}

function failedPairFile({ trees: [a, b], spanM, because, alternatives }: FailedPair) {
  return present({
    trees: twoOf(a, b),
    span_m: tidy(spanM),
    because: because.map(findingFile),
    alternatives: alternatives === undefined ? undefined : alternativesFile(alternatives),
  });
}

function refusedPinFile(pin: RefusedPin): FileOf<"pins_refused">[number] {
  const { sleeper, trees, because, alternatives } = pin;
  return present({
    sleeper,
    trees: twoOf(trees[0], trees[1]),
    because: because.map(findingFile),
    alternatives: alternatives === undefined ? undefined : alternativesFile(alternatives),
  });
}
