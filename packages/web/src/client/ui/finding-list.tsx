import { worstFirst, type Camp, type Finding } from "@nightspan/core";
import { namesOf, sayFinding } from "@nightspan/edge";
import { fill, WORDS } from "../words.ts";
import { Plate } from "./verdict-plate.tsx";

interface FindingListProps {
  readonly findings: readonly Finding[];
  readonly camp: Camp;
}

/** So many lines are read at once; of what breaks no rule only as many stand open. */
const AT_ONCE = 3;

/** Findings in words, the worst first. What breaks no rule stands behind "why", but for a few where little else is said. */
export function FindingList({ findings, camp }: FindingListProps) {
  const sorted = [...findings].sort(worstFirst);
  const open = sorted.filter((finding) => finding.verdict !== "clear");
  const plain = sorted.filter((finding) => finding.verdict === "clear" && !isBehind(finding));
  const shown = [...open, ...plain.slice(0, Math.max(0, AT_ONCE - open.length))];
  const behind = sorted.filter((finding) => !shown.includes(finding));
  return (
    <>
      <Lines findings={shown} camp={camp} />
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
