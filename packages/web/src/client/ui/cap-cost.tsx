import type { Camp, PlannedBerth } from "@nightspan/core";
import { namesOf, sayFinding } from "@nightspan/edge";
import { WORDS } from "../words.ts";

interface CapCostProps {
  readonly berth: PlannedBerth;
  readonly camp: Camp;
}

/** What a house cap on heights costs at this berth in angle, pull and seat. */
export function CapCost({ berth, camp }: CapCostProps) {
  const costs = berth.findings.filter(({ rule }) => rule.startsWith("cap."));
  if (costs.length === 0) return null;
  const names = namesOf(camp);
  return (
    <section class="cap-cost">
      <h3>{WORDS.berth.cap}</h3>
      <ul>
        {costs.map((finding) => (
          <li key={`${finding.rule} ${finding.subject}`}>{sayFinding(finding, names)}</li>
        ))}
      </ul>
    </section>
  );
}
