import type { Finding } from "../outcome/finding.ts";
import type { Camp } from "../plan/camp.ts";
import type { CampPlaces } from "./camp-places-types.ts";
import { NO_GROUND } from "./no-ground.ts";
import { findNamedPair, mapPair, pairFaults, type NamedPair } from "./pair-faults.ts";

/**
 * Of a camp with few trees: what keeps each tree that has another at the right distance from carrying a berth (dead,
 * doubtful, too thin, kept out), and which stated pairs are not to be used; of two trees alone also that they stand too
 * near or too far from each other. Of more trees nobody would read it; the funnel counts them.
 *
 * Shapes   findings, each once, in the order of the trees
 * Source   house-convention
 */
export function whyUnfit(camp: Camp, ground: CampPlaces, subject: string): Finding[] {
  const { anchors } = ground;
  if (anchors.length > MOST_TREES) return [];
  const { pairs } = camp.ground ?? NO_GROUND;
  const stated = pairs.flatMap(({ id }) => findNamedPair(camp, ground, { pair: id }) ?? []);
  const onMap = anchors.flatMap(({ tree: one }, at) =>
    anchors
      .slice(at + 1)
      .flatMap(({ tree: other }): NamedPair[] =>
        one === undefined || other === undefined ? [] : [mapPair(one, other)],
      ),
  );
  const faultsOf = (pair: NamedPair): Finding[] => pairFaults(camp, { blocked: [] }, pair, subject);
  const onStated = stated.flatMap(faultsOf).filter((fault) => !isOfSpan(fault));
  if (anchors.length === 2) return distinct([...onMap.flatMap(faultsOf), ...onStated]);
  const inRange = onMap.map(faultsOf).filter((faults) => !faults.some(isOfSpan));
  return distinct([...inRange.flat(), ...onStated]);
}

function isOfSpan({ rule }: Finding): boolean {
  return rule === "span.least" || rule === "span.most";
}

const MOST_TREES = 12;

function distinct(findings: readonly Finding[]): Finding[] {
  const byKey = new Map(
    findings.map((finding) => [[finding.rule, finding.subject, ...(finding.about ?? [])].join(" "), finding]),
  );
  return [...byKey.values()];
}
