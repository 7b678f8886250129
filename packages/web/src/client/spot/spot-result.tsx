import {
  findBerthRequest,
  type Camp,
  type HangState,
  type Instruction,
  type Plan,
  type PlannedBerth,
} from "@nightspan/core";
import {
  handDifference,
  namesOf,
  sayAdvice,
  sayDoubts,
  sayFigure,
  sayFinding,
  sayNext,
} from "@nightspan/edge";
import type { ComponentChildren } from "preact";
import { treeTag } from "../state/camp-names.ts";
import { campId, TONIGHT_ID } from "../state/camp-store.ts";
import type { Route } from "../state/route.ts";
import { spotAnswer, type SpotAnswer } from "../state/spot-answer.ts";
import {
  advised,
  AT_FIRST,
  measureNow,
  moved,
  relieved,
  stillSo,
  trusting,
  wouldNotGo,
} from "../state/spot-state.ts";
import { Button } from "../ui/button.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { TreesLookedAt } from "../ui/trees-looked-at.tsx";
import { VerdictWord } from "../ui/verdict-plate.tsx";
import { fill, WORDS } from "../words.ts";
import { spotHome } from "./spot-frame.tsx";
import type { SpotPageParts, SpotProps } from "./spot-parts.ts";
import { SpotPicture } from "./spot-picture.tsx";

interface ResultParts extends SpotPageParts {
  readonly step: 2 | 3;
}

/** What to do now: one move, or one word that there is none. */
export function resultPage(props: SpotProps, looked: Plan["treesLookedAt"]): ResultParts {
  const answer = spotAnswer(props.camp, props.berth, props.state);
  if (answer.kind === "change") return movePage(props, answer);
  if (answer.kind === "advice") return advicePage(props, answer);
  if (answer.kind === "leave-it") return leavePage(props, answer.check, looked);
  if (answer.kind === "misread") return misreadPage(props, answer.check);
  if (answer.kind === "hang-anew") return anewPage(props);
  if (answer.kind === "refused") return measurePage(props, WORDS.spot.cannot, WORDS.spot.cannotMore);
  return stuckPage();
}

/** Whether what bothered is gone. */
export function stillPage({ press }: SpotProps): SpotPageParts {
  return {
    ask: <h2 class="say">{WORDS.spot.still}</h2>,
    answers: (
      <>
        <Button size="spot" onPress={() => press(relieved)}>
          {WORDS.spot.gone}
        </Button>
        <Button size="spot" onPress={() => press(stillSo)}>
          {WORDS.spot.stillSo}
        </Button>
      </>
    ),
  };
}

type Check = Extract<SpotAnswer, { readonly check: unknown }>["check"];
type Change = Extract<SpotAnswer, { readonly kind: "change" }>;

function movePage({ camp, berth, press }: SpotProps, { instruction, after }: Change): ResultParts {
  const { end, action, cm } = instruction;
  const tag = treeTag(camp, end === "head" ? berth.headTree : berth.footTree);
  const suspension = camp.kit.find(({ id }) => id === berth.kit.suspension);
  const slings = suspension?.kind === "suspension" && suspension.type === "whoopie-sling";
  return {
    step: 2,
    ask: (
      <>
        <SpotPicture move={instruction} tag={tag} />
        <div class="spot-move">
          <h2 class="say">{moveWords(instruction, slings)}</h2>
          <p class="spot-cm">
            <span class="shout">{cm}</span> <span class="say">{WORDS.spot.units.cm}</span>
          </p>
        </div>
        <p class="spot-then">{thenWords(after.adjustment.state)}</p>
      </>
    ),
    answers: (
      <>
        <Button kind="action" size="spot" onPress={() => press((state) => moved(state, instruction))}>
          {WORDS.spot.done}
        </Button>
        <Button size="spot-second" onPress={() => press((state) => wouldNotGo(state, instruction))}>
          {WORDS.spot.willNot[action]}
        </Button>
      </>
    ),
  };
}

function moveWords({ end, action }: Instruction, slings: boolean): string {
  return fill(WORDS.spot.moves[action], { end, part: slings ? WORDS.spot.sling : WORDS.spot.strap });
}

function thenWords({ seatHeightM, footRaiseM }: HangState): string {
  return fill(WORDS.spot.then, { seat: handDifference(seatHeightM), raise: raiseWords(footRaiseM) });
}

function raiseWords(footRaiseM: number): string {
  if (Math.abs(footRaiseM) < 0.025) return WORDS.spot.level;
  const by = handDifference(Math.abs(footRaiseM));
  return fill(footRaiseM > 0 ? WORDS.spot.raisedBy : WORDS.spot.loweredBy, { by });
}

type Advice = Extract<SpotAnswer, { readonly kind: "advice" }>;

/** What helps besides moving a strap, and the figures that speak for it. */
function advicePage({ press }: SpotProps, { advice, check }: Advice): ResultParts {
  return {
    step: 2,
    ask: (
      <>
        <h2 class="spot-advice">{sayAdvice(advice)}</h2>
        <p class="spot-then">{WORDS.spot.adviceThen}</p>
        <ul class="note soft">
          {(check.symptom?.figures ?? []).slice(0, MOST_FIGURES).map((figure) => (
            <li key={figure.figure}>{sayFigure(figure)}</li>
          ))}
        </ul>
      </>
    ),
    answers: (
      <>
        <Button kind="action" size="spot" onPress={() => press(advised)}>
          {WORDS.spot.done}
        </Button>
        <Button
          size="spot-second"
          onPress={() => press((state) => ({ ...state, advised: state.advised + 1 }))}
        >
          {WORDS.spot.cannotDo}
        </Button>
      </>
    ),
  };
}

const MOST_FIGURES = 3;

/** Nothing to change, with the verdict of the berth as it hangs now and what is not sure enough. */
function leavePage(
  { camp, berth, state }: SpotProps,
  check: Check,
  looked: Plan["treesLookedAt"],
): ResultParts {
  const doubt = doubtOf(check, berth, camp);
  return {
    step: 3,
    ask: (
      <>
        <h2 class="say">{WORDS.spot.leaveIt}</h2>
        <p class="spot-then">{leaveWords(state.followed.length)}</p>
        {doubt === undefined ? null : <p>{doubt}</p>}
        <VerdictWord verdict={check.verdict} about={aboutOf(check, camp)} />
        <TreesLookedAt looked={looked} />
      </>
    ),
    answers: (
      <LinkButton kind="action" size="spot" to={spotHome(berth.id)}>
        {WORDS.spot.ready}
      </LinkButton>
    ),
  };
}

function aboutOf({ verdict, standing, adjustment }: Check, camp: Camp): string | undefined {
  if (verdict === "clear") return undefined;
  const found = [
    ...adjustment.findings.filter((finding) => finding.verdict === verdict),
    ...standing.flatMap((one) => (one.verdict === verdict ? [one.finding] : [])),
  ];
  return found[0] === undefined ? undefined : sayFinding(found[0], namesOf(camp));
}

function doubtOf({ adjustment }: Check, berth: PlannedBerth, camp: Camp): string | undefined {
  const request = berth.request ?? findBerthRequest(camp, berth);
  return request === undefined ? undefined : sayDoubts(adjustment, request)[0];
}

function leaveWords(count: number): string {
  if (count === 0) return WORDS.spot.leaveItMore;
  return count === 1 ? WORDS.spot.leaveItFollowedOne : fill(WORDS.spot.leaveItFollowed, { count });
}

function misreadPage(props: SpotProps, check: Check): ResultParts {
  const words = sayNext(check.adjustment, "tied-webbing");
  const { next } = check.adjustment;
  const title = titleOf(next);
  const asked = next === "measure-angles" ? ANGLES : [];
  const page = measurePage(props, title, words, asked);
  return {
    ...page,
    answers: (
      <>
        {page.answers}
        <Button size="spot-second" onPress={() => props.press(trusting)}>
          {WORDS.spot.soAllTheSame}
        </Button>
      </>
    ),
  };
}

function titleOf(next: Check["adjustment"]["next"]): string {
  if (next === "plan-again") return WORDS.spot.farTrees;
  return next === "measure-angles" ? WORDS.spot.anglesNext : WORDS.spot.misread;
}

const ANGLES: SpotProps["state"]["asked"] = ["head-angle", "foot-angle"];

function measurePage(
  { press }: SpotProps,
  title: string,
  more: string,
  besides: SpotProps["state"]["asked"] = [],
): ResultParts {
  const measure = (state: SpotProps["state"]) =>
    measureNow({ ...state, asked: [...new Set([...besides, ...state.asked])] });
  return plainPage(
    title,
    more,
    <Button kind="action" size="spot" onPress={() => press(measure)}>
      {WORDS.spot.measureAgain}
    </Button>,
  );
}

/** Hung anew, nothing of what was found or moved before tells any more. */
function anewPage({ press }: SpotProps): ResultParts {
  return plainPage(
    WORDS.spot.hangAnew,
    WORDS.spot.hangAnewMore,
    <>
      <Button
        kind="action"
        size="spot"
        onPress={() => press(({ asked, helped }) => measureNow({ ...AT_FIRST, asked, helped }))}
      >
        {WORDS.spot.hungAnew}
      </Button>
      <WaysOut />
    </>,
  );
}

function stuckPage(): ResultParts {
  return plainPage(WORDS.spot.stuck, WORDS.spot.stuckMore, <WaysOut />);
}

function plainPage(title: string, more: string, answers: ComponentChildren): ResultParts {
  return {
    step: 2,
    ask: (
      <>
        <h2 class="say">{title}</h2>
        <p class="spot-then">{more}</p>
      </>
    ),
    answers,
  };
}

function WaysOut() {
  const other: Route = campId.value === TONIGHT_ID ? { page: "tonight", step: "look" } : { page: "map" };
  return (
    <>
      <LinkButton size="spot-second" to={other}>
        {WORDS.spot.otherTrees}
      </LinkButton>
      <LinkButton size="spot-second" to={{ page: "tonight", step: "ground" }}>
        {WORDS.spot.ground}
      </LinkButton>
    </>
  );
}
