import { worstFirst } from "@nightspan/core";
import { namesOf, sayFinding } from "@nightspan/edge";
import { useMemo } from "preact/hooks";
import { treeTag, unlookedEnds } from "../state/camp-names.ts";
import { answer, work, type Answer } from "../state/plan-store.ts";
import { fill, WORDS } from "../words.ts";
import { VerdictWord } from "./verdict-plate.tsx";

/** The verdict of the whole camp, and at what to look. */
export function CampVerdict() {
  const now = answer.value;
  if (now === undefined) return null;
  const isOnTheWay = work.value.state === "working" && work.value.proving;
  // What a better choice may replace is never called free of faults.
  if (isOnTheWay && now.plan.verdict === "clear") return <p class="note soft">{WORDS.planning.notYet}</p>;
  return <AnswerVerdict now={now} />;
}

function AnswerVerdict({ now }: { readonly now: Answer }) {
  const about = useMemo(() => aboutOf(now), [now]);
  return <VerdictWord verdict={now.plan.verdict} about={about} />;
}

function aboutOf(now: Answer): string | undefined {
  const { plan, camp } = now;
  if (plan.verdict === "clear") return undefined;
  const berths = berthsOf(plan.berths.filter((one) => one.verdict === plan.verdict));
  if (plan.verdict === "do-not-hang") return berths ?? worstOfCamp(now);
  const tags = [...new Set(unlookedEnds(plan.berths).map(({ tree }) => treeTag(camp, tree)))];
  if (tags.length === 0) return berths ?? worstOfCamp(now);
  return tags.length > 2 ? fill(WORDS.map.trees, { count: tags.length }) : tags.join(", ");
}

function berthsOf(berths: readonly { readonly id: string }[]): string | undefined {
  const [only, ...others] = berths;
  if (only === undefined) return undefined;
  return others.length === 0
    ? fill(WORDS.map.berth, { id: only.id })
    : fill(WORDS.map.berthCount, { count: berths.length });
}

/** Where no berth is to blame: the worst that is found of the camp as a whole. */
function worstOfCamp({ plan, camp }: Answer): string | undefined {
  const [worst] = plan.findings.filter(({ verdict }) => verdict === plan.verdict).sort(worstFirst);
  return worst === undefined ? undefined : sayFinding(worst, namesOf(camp));
}
