import { SYMPTOMS, type AsHung } from "@nightspan/core";
import { saySymptom } from "@nightspan/edge";
import {
  bothered,
  counted,
  measureNow,
  SAT,
  tellAs,
  toggled,
  told,
  type SpotState,
} from "../state/spot-state.ts";
import {
  canBeTold,
  CHOICES,
  isChoice,
  NUMBERS,
  TOLD_ALONE,
  TOLD_WITH_HELP,
  type ChoiceThing,
  type NumberThing,
  type SpotPlace,
} from "../state/spot-things.ts";
import { Button } from "../ui/button.tsx";
import { HalfStepper } from "../ui/half-stepper.tsx";
import { sayHalves } from "../ui/say-halves.ts";
import { fill, WORDS } from "../words.ts";
import type { SpotPageParts, SpotProps } from "./spot-parts.ts";

/** Who can tell, or what bothers. */
export function whoPage({ press }: SpotProps): SpotPageParts {
  return {
    ask: <h2 class="say">{WORDS.spot.who}</h2>,
    answers: (
      <>
        <Button size="spot" onPress={() => press((state) => tellAs(state, false))}>
          {WORDS.spot.alone}
        </Button>
        <Button size="spot" onPress={() => press((state) => tellAs(state, true))}>
          {WORDS.spot.helped}
        </Button>
        <Button size="spot" onPress={() => press((state) => ({ ...state, page: "bothers" }))}>
          {WORDS.spot.bothers}
        </Button>
      </>
    ),
  };
}

/** What is to be told each time. */
export function tellPage({ state, press, place }: SpotProps): SpotPageParts {
  const all = state.helped ? TOLD_WITH_HELP : TOLD_ALONE;
  const things = all.filter((thing) => canBeTold(thing, place));
  return {
    ask: (
      <>
        <h2 class="say">{WORDS.spot.tell}</h2>
        <div class="spot-choices">
          {things.map((thing) => (
            <Button
              key={thing}
              size="spot-second"
              pressed={state.asked.includes(thing)}
              onPress={() => press((before) => toggled(before, thing, things))}
            >
              {WORDS.spot.things[thing]}
            </Button>
          ))}
        </div>
      </>
    ),
    answers: (
      <Button
        kind="action"
        size="spot"
        offBecause={state.asked.length === 0 ? WORDS.spot.tellNone : undefined}
        onPress={() => press(measureNow)}
      >
        {state.asked.length === 0 ? WORDS.spot.tellNone : WORDS.spot.next}
      </Button>
    ),
  };
}

export function bothersPage({ press }: SpotProps): SpotPageParts {
  return {
    ask: <h2 class="say">{WORDS.spot.bothersTitle}</h2>,
    answers: SYMPTOMS.map((symptom) => (
      <Button key={symptom} size="spot-second" onPress={() => press((state) => bothered(state, symptom))}>
        {saySymptom(symptom)}
      </Button>
    )),
  };
}

/** One thing that is told: how the sit was, one answer of a few, or a number. */
export function measurePage(props: SpotProps): SpotPageParts {
  const thing = props.state.asked[props.state.at] ?? "sit";
  if (thing === "sit") return sitPage(props);
  return isChoice(thing) ? choicePage(props, thing) : numberPage(props, thing);
}

const SAT_KEYS = ["too-low", "too-high", "slides", "knees", "well"] as const;

function sitPage({ press }: SpotProps): SpotPageParts {
  return {
    ask: <h2 class="say">{WORDS.spot.ask.sit}</h2>,
    answers: SAT_KEYS.map((sat) => (
      <Button key={sat} size="spot" onPress={() => press(SAT[sat])}>
        {WORDS.spot.sat[sat]}
      </Button>
    )),
  };
}

function choicePage({ press }: SpotProps, thing: ChoiceThing): SpotPageParts {
  const words: Readonly<Record<string, string>> = WORDS.spot[thing];
  const answers: Readonly<Record<string, AsHung>> = CHOICES[thing];
  return {
    ask: <h2 class="say">{WORDS.spot.ask[thing]}</h2>,
    answers: Object.entries(answers).map(([choice, found]) => (
      <Button key={choice} size="spot" onPress={() => press((state) => told(state, found))}>
        {words[choice]}
      </Button>
    )),
  };
}

function numberPage({ state, press, place }: SpotProps, thing: NumberThing): SpotPageParts {
  const kind = NUMBERS[thing];
  const value = state.value ?? kind.start(place);
  const set = (to: number): void => {
    press((before) => counted(before, Math.min(kind.most, Math.max(kind.least, to))));
  };
  return {
    ask: (
      <HalfStepper
        title={WORDS.spot.ask[thing]}
        shown={sayHalves(value)}
        unit={WORDS.spot.units[kind.unit]}
        note={fill(WORDS.spot.planned, { value: startWords(thing, place) })}
        less={WORDS.spot.less}
        more={WORDS.spot.more}
        onLess={() => set(value - kind.by)}
        onMore={() => set(value + kind.by)}
      />
    ),
    answers: (
      <Button
        kind="action"
        size="spot"
        onPress={() => press((before: SpotState) => told(before, kind.found(value, place)))}
      >
        {WORDS.spot.isSo}
      </Button>
    ),
  };
}

function startWords(thing: NumberThing, place: SpotPlace): string {
  const { start, unit } = NUMBERS[thing];
  const space = unit === "degrees" ? "" : "\u00a0";
  return `${sayHalves(start(place))}${space}${WORDS.spot.units[unit]}`;
}
