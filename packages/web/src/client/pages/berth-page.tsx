import type { Camp, Plan, PlannedBerth } from "@nightspan/core";
import { footSentence, headSentence, sitSentence } from "@nightspan/edge";
import { Alternatives } from "../berth/alternatives.tsx";
import { BerthPicture } from "../berth/berth-picture.tsx";
import { isOther } from "../berth/parted-findings.ts";
import { TarpPart } from "../berth/tarp-part.tsx";
import { WarmthPart } from "../berth/warmth-part.tsx";
import { sleeperName } from "../state/camp-names.ts";
import { answer, planRefusals } from "../state/plan-store.ts";
import { checkOnTheSpot } from "../state/spot-store.ts";
import { BerthVerdict } from "../ui/berth-verdict.tsx";
import { Button } from "../ui/button.tsx";
import { Cautions } from "../ui/cautions.tsx";
import { EndFigures } from "../ui/end-figures.tsx";
import { FindingList } from "../ui/finding-list.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { Name } from "../ui/name.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { CapCost } from "../ui/cap-cost.tsx";
import { SpanWindow } from "../ui/span-window.tsx";
import { RefusalList } from "../ui/refusal-list.tsx";
import { TreesLookedAt } from "../ui/trees-looked-at.tsx";
import { Working } from "../ui/working.tsx";
import { fill, WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";
import { BerthStepper } from "../ui/berth-stepper.tsx";

/** One berth: the drawing from the side, and beside it what to do, in order. Nothing to fill in. */
export function BerthPage({ id }: { readonly id: string }) {
  const now = answer.value;
  const berth = now?.plan.berths.find((one) => one.id === id);
  if (now === undefined || berth === undefined) return <NoBerth id={id} waiting={now === undefined} />;
  const { plan, camp } = now;
  return (
    <CampFrame
      page="berth"
      back={{ page: "map" }}
      heading={
        <h1 class="strip-name">
          <NumberPlate id={berth.id} verdict={berth.verdict} />{" "}
          <Name>{sleeperName(camp, berth.sleeper)}</Name>
        </h1>
      }
      verdict={<BerthVerdict camp={camp} berth={berth} />}
      foot={<BerthStepper berths={plan.berths} id={id} />}
    >
      <div class="berth-page">
        <BerthPicture now={now} berth={berth} />
        <section class="berth-words">
          <Working />
          <div class="narrow-only">
            <BerthVerdict camp={camp} berth={berth} />
          </div>
          <BerthWords plan={plan} camp={camp} berth={berth} />
          <div class="narrow-only">
            <BerthStepper berths={plan.berths} id={id} />
          </div>
        </section>
      </div>
    </CampFrame>
  );
}

function NoBerth({ id, waiting }: { readonly id: string; readonly waiting: boolean }) {
  return (
    <CampFrame page="berth" back={{ page: "map" }}>
      <div class="empty">
        <Working />
        <RefusalList refusals={planRefusals.value} />
        {waiting ? null : <p class="lead">{fill(WORDS.berth.none, { id })}</p>}
        <LinkButton to={{ page: "map" }}>{WORDS.berth.toMap}</LinkButton>
      </div>
    </CampFrame>
  );
}

interface BerthWordsProps {
  readonly plan: Plan;
  readonly camp: Camp;
  readonly berth: PlannedBerth;
}

function BerthWords({ plan, camp, berth }: BerthWordsProps) {
  return (
    <>
      {berth.setBy === berth.sleeper ? null : (
        <p class="lead set-by">
          {fill(WORDS.berth.setBy, {
            setter: sleeperName(camp, berth.setBy),
            sleeper: sleeperName(camp, berth.sleeper),
          })}
        </p>
      )}
      <EndFigures title="HEAD" end={berth.hang.head} berth={berth} camp={camp} treeId={berth.headTree}>
        {headSentence(berth, camp)}
      </EndFigures>
      <EndFigures title="FOOT" end={berth.hang.foot} berth={berth} camp={camp} treeId={berth.footTree}>
        {footSentence(berth, camp)}
      </EndFigures>
      <p class="berth-sit">{sitSentence(berth)}</p>
      <Button kind="action" size="spot" onPress={() => checkOnTheSpot(berth.id)}>
        {WORDS.spot.open}
      </Button>
      <TarpPart plan={plan} camp={camp} berth={berth} />
      <WarmthPart plan={plan} camp={camp} berth={berth} />
      <SpanWindow berth={berth} />
      <Alternatives berth={berth} camp={camp} />
      <CapCost berth={berth} camp={camp} />
      <h3>{WORDS.berth.findings}</h3>
      <FindingList findings={berth.findings.filter(isOther)} camp={camp} />
      <TreesLookedAt looked={plan.treesLookedAt} />
      <NotChecked plan={plan} />
      <LinkButton size="wide" to={{ page: "cards" }}>
        {WORDS.berth.openCard}
      </LinkButton>
      <LinkButton size="wide" to={{ page: "cards", part: "pocket" }}>
        {WORDS.cards.tools}
      </LinkButton>
      <Cautions />
    </>
  );
}
