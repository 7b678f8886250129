import type { ComponentChildren } from "preact";
import { settings, remember } from "../state/settings.ts";
import { go, type TonightStep } from "../state/route.ts";
import { startTonight } from "../state/tonight.ts";
import { Bead } from "../ui/bead.tsx";
import { Button } from "../ui/button.tsx";
import { HalfStepper } from "../ui/half-stepper.tsx";
import { sayHalves } from "../ui/say-halves.ts";
import { PlainTop } from "../ui/plain-top.tsx";
import { WORDS } from "../words.ts";
import { LookUpPicture } from "../ui/look-up-picture.tsx";

/** Two trees, tonight: one question a page, and a sentence for each tree at the end. */
export function TonightPage({ step }: { readonly step: Exclude<TonightStep, "answer"> }) {
  if (step === "ground") return <GroundTonight />;
  if (step === "steps") return <StepsStep />;
  if (step === "stature") return <StatureStep />;
  return <LookStep />;
}

interface SpotProps {
  readonly step: number;
  readonly back: "first" | TonightStep;
  readonly children: ComponentChildren;
  readonly answers: ComponentChildren;
}

/** One page of the way: what is asked above, the answers in the lower half. */
function Spot({ step, back, children, answers }: SpotProps) {
  return (
    <div class="spot">
      <PlainTop
        title={WORDS.tonight.title}
        back={back === "first" ? { page: "first" } : { page: "tonight", step: back }}
      />
      <main id="content" class="spot-page" tabIndex={-1}>
        <div class="spot-ask">{children}</div>
        <div class="spot-answers">
          <Bead step={step} of={4} />
          {answers}
        </div>
      </main>
    </div>
  );
}

function LookStep() {
  return (
    <Spot
      step={1}
      back="first"
      answers={
        <>
          <Button kind="action" size="spot" onPress={() => go({ page: "tonight", step: "steps" })}>
            {WORDS.tonight.allThree}
          </Button>
          <Button size="spot-second" onPress={() => go({ page: "tonight", step: "ground" })}>
            {WORDS.tonight.notAll}
          </Button>
        </>
      }
    >
      <LookUpPicture />
      <h2 class="say">{WORDS.tonight.lookTitle}</h2>
      <ul class="spot-list lead">
        <li>{WORDS.tonight.light}</li>
        <li>{WORDS.tonight.crowns}</li>
        <li>{WORDS.tonight.nothingDead}</li>
      </ul>
    </Spot>
  );
}

const LEAST_STEPS = 2;
const MOST_STEPS = 20;

function StepsStep() {
  const { steps } = settings.value;
  const set = (to: number): void => remember({ steps: Math.min(MOST_STEPS, Math.max(LEAST_STEPS, to)) });
  return (
    <Spot
      step={2}
      back="look"
      answers={
        <Button kind="action" size="spot" onPress={() => go({ page: "tonight", step: "stature" })}>
          {WORDS.tonight.next}
        </Button>
      }
    >
      <HalfStepper
        title={WORDS.tonight.stepsTitle}
        shown={sayHalves(steps)}
        unit={WORDS.tonight.steps}
        note={WORDS.tonight.stepsNote}
        less={WORDS.tonight.fewer}
        more={WORDS.tonight.more}
        onLess={() => set(steps - 0.5)}
        onMore={() => set(steps + 0.5)}
      />
    </Spot>
  );
}

const LEAST_STATURE_CM = 100;
const MOST_STATURE_CM = 220;

function StatureStep() {
  const statureCm = Math.round(settings.value.statureM * 100);
  const set = (toCm: number): void => {
    remember({ statureM: Math.min(MOST_STATURE_CM, Math.max(LEAST_STATURE_CM, toCm)) / 100 });
  };
  return (
    <Spot
      step={3}
      back="steps"
      answers={
        <Button kind="action" size="spot" onPress={startTonight}>
          {WORDS.tonight.show}
        </Button>
      }
    >
      <HalfStepper
        title={WORDS.tonight.statureTitle}
        shown={(statureCm / 100).toFixed(2)}
        unit={WORDS.tonight.stature}
        less={WORDS.tonight.shorter}
        more={WORDS.tonight.taller}
        onLess={() => set(statureCm - 5)}
        onMore={() => set(statureCm + 5)}
      />
    </Spot>
  );
}

function GroundTonight() {
  return (
    <Spot
      step={1}
      back="look"
      answers={
        <Button size="spot" onPress={() => go({ page: "tonight", step: "look" })}>
          {WORDS.tonight.lookAgain}
        </Button>
      }
    >
      <h2 class="say">{WORDS.tonight.groundTitle}</h2>
      <p class="lead">{WORDS.tonight.groundSay}</p>
      <p class="lead">{WORDS.tonight.groundMore}</p>
    </Spot>
  );
}
