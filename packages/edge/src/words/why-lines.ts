import type { Plan } from "@nightspan/core";
import type { Names } from "./names.ts";
import { length } from "./quantities.ts";
import { sayFinding } from "./say-finding.ts";
import { sayHangNote } from "./say-hang-note.ts";
import { sayVerdict } from "./say-verdict.ts";

/** How the answer was found, and how sure it is to be the best; then each berth's findings, the worst first. */
export function whyLines(plan: Plan, names: Names): readonly string[] {
  const { supply } = plan;
  const lost = Object.entries(supply.blockedBy)
    .filter(([, count]) => count > 0)
    .map(([by, count]) => `${by} ${count}`);
  return [
    `Of ${supply.trees} trees ${supply.usable} may carry; ${supply.pairs} pairs stand at the right distance.`,
    ...(lost.length === 0 ? [] : [`Pairs lost: ${lost.join(", ")}.`]),
    `${supply.berths} berths are left to choose from.`,
    boundLine(plan),
    `Cost ${plan.cost.toFixed(4)}, at least ${plan.lowerBound.toFixed(4)}; gap ${(plan.gap * 100).toFixed(2)} %. ${plan.method}.`,
    ...costLines(plan),
    ...plan.findings.map((finding) => `${sayVerdict(finding.verdict)}: ${sayFinding(finding, names)}`),
    ...plan.berths.flatMap(({ id, spanM, hang, findings }) => [
      `Berth ${id}, ${length(spanM)}:`,
      ...hang.notes.map((note) => `  ${sayHangNote(note)}`),
      ...findings.map((finding) => `  ${sayVerdict(finding.verdict)}: ${sayFinding(finding, names)}`),
    ]),
  ];
}

function costLines({ costTerms = [] }: Plan): readonly string[] {
  return costTerms.map(
    ({ name, weight, measure, cost }) => `  ${name}: ${measure.toFixed(4)} × ${weight} = ${cost.toFixed(4)}.`,
  );
}

function boundLine({ placed, asked, bound }: Plan): string {
  if (placed === asked) return "Everybody has a berth.";
  if (placed === bound) return `No layout places more than ${bound}, for the positions as surveyed.`;
  return `At most ${bound} could be placed; the search did not settle it.`;
}
