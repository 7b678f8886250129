import type { Camp, PlannedBerth } from "@nightspan/core";
import type { ComponentChildren } from "preact";
import { sleeperName } from "../state/camp-names.ts";
import { campId, TONIGHT_ID } from "../state/camp-store.ts";
import type { Route } from "../state/route.ts";
import { canStepBack, stepBack } from "../state/spot-store.ts";
import { Bead } from "../ui/bead.tsx";
import { Button } from "../ui/button.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { Name } from "../ui/name.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { RedNightButton } from "../ui/red-night-button.tsx";
import { fill, WORDS } from "../words.ts";

interface SpotFrameProps {
  readonly camp: Camp;
  readonly berth: PlannedBerth;
  /** Measured, put right, sat again. */
  readonly step: 1 | 2 | 3;
  readonly children: ComponentChildren;
  readonly answers: ComponentChildren;
}

/** One page on the spot: whose berth, one thing, and the answers in the lower half. */
export function SpotFrame({ camp, berth, step, children, answers }: SpotFrameProps) {
  const { measured, right, again } = WORDS.spot.bead;
  return (
    <div class="spot">
      <header class="strip spot-strip">
        <LinkButton kind="plain" class="strip-back" to={spotHome(berth.id)} label={WORDS.spot.toBerth}>
          <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
            <path d="M15 4L7 12L15 20" fill="none" stroke="currentColor" stroke-width="3" />
          </svg>
        </LinkButton>
        <h1 class="strip-name strip-heading" aria-label={fill(WORDS.spot.title, { id: berth.id })}>
          <NumberPlate id={berth.id} verdict={berth.verdict} />{" "}
          <Name>{sleeperName(camp, berth.sleeper)}</Name>
        </h1>
        {canStepBack.value ? <Button onPress={stepBack}>{WORDS.spot.undo}</Button> : null}
        <RedNightButton brief />
      </header>
      <main id="content" class="spot-page" tabIndex={-1}>
        <div class="spot-ask" role="status">
          {children}
        </div>
        <div class="spot-way">
          <Bead step={step} of={3} />
          <p class="spot-way-words note">
            {[measured, right, again].map((word, at) => (
              <span key={word} class={at + 1 === step ? "spot-way-now" : ""}>
                {word}
              </span>
            ))}
          </p>
        </div>
        <div class="spot-answers">{answers}</div>
      </main>
    </div>
  );
}

/** Where one comes from: the berth, or the answer between two trees. */
export function spotHome(berth: string): Route {
  return campId.value === TONIGHT_ID ? { page: "tonight", step: "answer" } : { page: "berth", berth };
}
