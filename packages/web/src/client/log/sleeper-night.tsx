import { learntOf, type Felt, type Sleeper, type Trouble, type WarmthHalf } from "@nightspan/core";
import type { LoggedSleeperDocument } from "@nightspan/edge";
import { answeredOf, nights, noteNight, type NightOfLog } from "../state/log-store.ts";
import { answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { FeltFigure } from "./felt-figure.tsx";
import { Learnt } from "./learnt.tsx";

const FELT = ["cold", "cool", "right", "warm"] as const satisfies readonly Felt[];
const HALVES = ["over", "under"] as const satisfies readonly WarmthHalf[];
const TROUBLES = ["slid", "wet", "noise"] as const satisfies readonly Trouble[];

interface SleeperNightProps {
  readonly sleeper: Sleeper;
  readonly night: NightOfLog;
}

/** One sleeper's morning: top and back as pictures to press, what else disturbed them, and what is learnt. */
export function SleeperNight({ sleeper, night }: SleeperNightProps) {
  const { id, name } = sleeper;
  const said = answeredOf(night, id) ?? { sleeper: id };
  const tell = (change: Partial<LoggedSleeperDocument>): void => noteNight(night, { ...said, ...change });
  const troubles = said.trouble ?? [];
  return (
    <section class="log-sleeper" aria-label={name}>
      <h3>
        <Name>{name}</Name>
      </h3>
      {HALVES.map((half) => (
        <div key={half} class="log-half" role="group" aria-label={`${name}, ${WORDS.log[half]}`}>
          <span class="log-half-name">{WORDS.log[half]}</span>
          {FELT.map((felt) => (
            <Button
              key={felt}
              class="felt"
              pressed={said[half]?.felt === felt}
              label={fill(WORDS.log.half, { name, half: WORDS.log[half], felt: WORDS.log.felt[felt] })}
              onPress={() => tell({ [half]: { ...reckoned(id, half), felt } })}
            >
              <FeltFigure half={half} felt={felt} />
              <span>{WORDS.log.felt[felt]}</span>
            </Button>
          ))}
        </div>
      ))}
      <div class="choice-row">
        {TROUBLES.map((trouble) => (
          <Button
            key={trouble}
            pressed={troubles.includes(trouble)}
            label={fill(WORDS.log.aboutTrouble, { name, trouble: WORDS.log.trouble[trouble] })}
            onPress={() => tell({ trouble: toggled(troubles, trouble) })}
          >
            {WORDS.log.trouble[trouble]}
          </Button>
        ))}
      </div>
      <label class="find">
        {WORDS.log.note}
        <input
          class="input"
          aria-label={fill(WORDS.log.noteOf, { name })}
          value={said.note ?? ""}
          dir="auto"
          maxLength={2000}
          onChange={(event) => noteNight(night, withNote(said, event.currentTarget.value))}
        />
      </label>
      <Learnt sleeper={sleeper} learnt={learntOf(sleeper, nights.value)} />
    </section>
  );
}

/** What the plan reckoned for this half: the log keeps it beside the answer. Of nobody under 16. */
function reckoned(sleeper: string, half: WarmthHalf): { readonly margin_k?: number; readonly item?: string } {
  const warmth = answer.peek()?.plan.berths.find((berth) => berth.sleeper === sleeper)?.warmth;
  const { marginK, item } = warmth?.[half] ?? {};
  return {
    ...(marginK === undefined ? {} : { margin_k: Math.round(marginK * 10) / 10 }),
    ...(item === undefined ? {} : { item }),
  };
}

function toggled(troubles: readonly Trouble[], one: Trouble): Trouble[] {
  return troubles.includes(one) ? troubles.filter((other) => other !== one) : [...troubles, one];
}

/** The answer with another note; one of nothing is none. */
function withNote(said: LoggedSleeperDocument, written: string): LoggedSleeperDocument {
  const next: LoggedSleeperDocument = { ...said, note: written.trim() };
  if (next.note === "") Reflect.deleteProperty(next, "note");
  return next;
}
