import { worstFirst, type Camp, type Finding } from "@nightspan/core";
import { namesOf, sayFinding } from "@nightspan/edge";
import { Plate } from "./verdict-plate.tsx";

interface FindingListProps {
  readonly findings: readonly Finding[];
  readonly camp: Camp;
}

/** Findings in words, the worst first. */
export function FindingList({ findings, camp }: FindingListProps) {
  const names = namesOf(camp);
  return (
    <ul class="findings">
      {[...findings].sort(worstFirst).map((finding) => (
        <li key={`${finding.rule} ${finding.subject} ${(finding.about ?? []).join(" ")}`} class="finding">
          <Plate verdict={finding.verdict} />
          <span dir="auto">{sayFinding(finding, names)}</span>
        </li>
      ))}
    </ul>
  );
}
