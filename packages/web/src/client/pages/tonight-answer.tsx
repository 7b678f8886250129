import type { Camp, Plan, PlannedBerth } from "@nightspan/core";
import { berthScene } from "@nightspan/drawing";
import {
  footSentence,
  headSentence,
  labels,
  measure,
  namesOf,
  sayPairsOut,
  sayUnplaced,
  sitSentence,
} from "@nightspan/edge";
import { useMemo } from "preact/hooks";
import { opened } from "../state/camp-store.ts";
import { answer, planRefusals } from "../state/plan-store.ts";
import { satIn } from "../state/spot-store.ts";
import { lookedAtBoth } from "../state/tonight.ts";
import { Button } from "../ui/button.tsx";
import { Cautions } from "../ui/cautions.tsx";
import { Drawing } from "../ui/drawing.tsx";
import { FindingList } from "../ui/finding-list.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { PlainTop } from "../ui/plain-top.tsx";
import { RefusalList } from "../ui/refusal-list.tsx";
import { BerthVerdict } from "../ui/berth-verdict.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { TreesLookedAt } from "../ui/trees-looked-at.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { StartAgain } from "../ui/start-again.tsx";

/** How to hang between the two trees: a sentence for each, and what is still to be looked at. */
export function TonightAnswer() {
  const now = answer.value;
  const berth = now?.plan.berths[0];
  return (
    <div class="spot">
      <PlainTop title={WORDS.tonight.title} back={{ page: "tonight", step: "stature" }} />
      <main id="content" class="spot-page answer-page" tabIndex={-1}>
        <Working />
        {opened.value === undefined ? <StartAgain /> : null}
        <RefusalList refusals={planRefusals.value} />
        {now === undefined ? null : berth === undefined ? (
          <NoHang plan={now.plan} camp={now.camp} />
        ) : (
          <Answer plan={now.plan} camp={now.camp} berth={berth} />
        )}
      </main>
    </div>
  );
}

interface AnswerProps {
  readonly plan: Plan;
  readonly camp: Camp;
}

const ANSWER_PICTURE = { widthPx: 358, words: { labels, measure }, pulls: false, figures: false } as const;

function Answer({ plan, camp, berth }: AnswerProps & { readonly berth: PlannedBerth }) {
  const scene = useMemo(() => berthScene(plan, camp, berth.id, ANSWER_PICTURE), [plan]);
  const looked = plan.treesLookedAt.done >= plan.treesLookedAt.of;
  return (
    <>
      <div class="answer-picture">
        <Drawing scene={scene} />
      </div>
      <BerthVerdict camp={camp} berth={berth} />
      <TreesLookedAt looked={plan.treesLookedAt} />
      <ol class="answer-sentences">
        <li>{headSentence(berth, camp)}</li>
        <li>{footSentence(berth, camp)}</li>
        <li>{sitSentence(berth)}</li>
      </ol>
      {looked ? null : (
        <div class="answer-next">
          <Button kind="action" size="spot" onPress={lookedAtBoth}>
            {WORDS.tonight.looked}
          </Button>
        </div>
      )}
      {looked ? <AfterTheSit berth={berth.id} /> : null}
      <LinkButton size="spot-second" to={{ page: "tonight", step: "look" }}>
        {WORDS.tonight.otherTrees}
      </LinkButton>
      <NotChecked plan={plan} />
      <Cautions />
      <details class="more">
        <summary class="button">{WORDS.berth.why}</summary>
        <FindingList findings={berth.findings} camp={camp} />
      </details>
      <p class="note soft">{WORDS.tonight.keep}</p>
      <LinkButton to={{ page: "berth", berth: berth.id }}>{WORDS.tonight.openCamp}</LinkButton>
    </>
  );
}

const SAT_KEYS = ["too-low", "too-high", "slides", "knees"] as const;

/** Once both trees were looked at and somebody sat: four answers, each leads to one thing to change. */
function AfterTheSit({ berth }: { readonly berth: string }) {
  return (
    <section class="after-sit">
      <h2>{WORDS.tonight.sat}</h2>
      <div class="spot-pair">
        {SAT_KEYS.map((sat) => (
          <Button key={sat} size="spot" onPress={() => satIn(berth, sat)}>
            {WORDS.spot.sat[sat]}
          </Button>
        ))}
      </div>
    </section>
  );
}

function NoHang({ plan, camp }: AnswerProps) {
  return (
    <>
      <h2 class="say">{WORDS.tonight.refusedTitle}</h2>
      <ul class="why-not lead">
        {whyNot(plan, camp).map((reason) => (
          <li key={reason}>{reason}</li>
        ))}
      </ul>
      <div class="spot-answers">
        <LinkButton kind="action" size="spot" to={{ page: "tonight", step: "steps" }}>
          {WORDS.tonight.otherTrees}
        </LinkButton>
        <LinkButton size="spot-second" to={{ page: "tonight", step: "ground" }}>
          {WORDS.tonight.groundTitle}
        </LinkButton>
      </div>
      <Cautions />
    </>
  );
}

/** The house rule that keeps the pair out, or what stood in the way of the hang. */
function whyNot(plan: Plan, camp: Camp): readonly string[] {
  const out = sayPairsOut(camp);
  return out.length > 0 ? out : plan.unplaced.flatMap((one) => sayUnplaced(one, namesOf(camp)));
}
