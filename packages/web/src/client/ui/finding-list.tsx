import { worstFirst, type Camp, type Finding } from "@nightspan/core";
import { namesOf, sayFinding } from "@nightspan/edge";
import { fill, WORDS } from "../words.ts";
import { Plate } from "./verdict-plate.tsx";

interface FindingListProps {
  readonly findings: readonly Finding[];
  readonly camp: Camp;
}

/** Findings in words, the worst first; what only backs them up, and breaks no rule, stands behind "why". */
export function FindingList({ findings, camp }: FindingListProps) {
  const sorted = [...findings].sort(worstFirst);
  const behind = sorted.filter(isBehind);
  return (
    <>
      <Lines findings={sorted.filter((finding) => !isBehind(finding))} camp={camp} />
      {behind.length === 0 ? null : (
        <details class="why">
          <summary>{fill(WORDS.berth.whyMore, { count: behind.length })}</summary>
          <Lines findings={behind} camp={camp} />
        </details>
      )}
    </>
  );
}

function isBehind({ depth, verdict }: Finding): boolean {
  return depth === "why" && verdict === "clear";
}

function Lines({ findings, camp }: FindingListProps) {
  const names = namesOf(camp);
  return (
    <ul class="findings">
      {findings.map((finding) => (
        <li key={`${finding.rule} ${finding.subject} ${(finding.about ?? []).join(" ")}`} class="finding">
          <Plate verdict={finding.verdict} />
          <span dir="auto">{sayFinding(finding, names)}</span>
        </li>
      ))}
    </ul>
  );
}
