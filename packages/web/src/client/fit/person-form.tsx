import { useId } from "preact/hooks";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { setField } from "../state/field-value.ts";
import { PERSON } from "../state/store-camp.ts";
import { Button } from "../ui/button.tsx";
import { DayField, FieldList, NumberField, TextField } from "../ui/field.tsx";
import { fill, WORDS } from "../words.ts";
import { PersonPicture } from "./person-picture.tsx";

const BANDS = ["25-40", "40-55", "55-70", "70-85", "85-100", "100-120"] as const;
const LEAST_M = 1;
const MOST_M = 2.1;

/** Who goes, how cold it gets, and when: pressed, not typed, as far as can be. */
export function PersonForm() {
  const document = opened.value?.document;
  const person = document?.sleepers[0];
  if (document === undefined || person === undefined) return null;
  const { stature_m: stature, mass_band: band, mass_kg: mass, sleeps = "usual" } = person;
  return (
    <div class="fit-person">
      <div class="fit-body">
        <PersonPicture statureM={stature} />
        <div class="fit-steps">
          <Stepper
            title={WORDS.fit.stature}
            shown={fill(WORDS.fit.metres, { value: stature.toFixed(2) })}
            less={WORDS.fit.shorter}
            more={WORDS.fit.taller}
            onStep={(by) => {
              const next = Math.min(MOST_M, Math.max(LEAST_M, Math.round((stature + by * 0.05) * 100) / 100));
              setField([...PERSON, "stature_m"], next);
            }}
          />
          <Stepper
            title={WORDS.fit.low}
            shown={fill(WORDS.fit.degrees, { value: sayWhole(document.night?.low_c ?? 5) })}
            less={WORDS.fit.colder}
            more={WORDS.fit.warmer}
            onStep={(by) => setField(["night", "low_c"], (document.night?.low_c ?? 5) + by)}
          />
        </div>
      </div>
      <Choices
        title={WORDS.fit.band}
        note={WORDS.fit.bandNote}
        now={mass === undefined ? (band ?? "") : ""}
        choices={BANDS.map((one) => [one, fill(WORDS.fit.kilos, { band: one.replace("-", "–") })])}
        onChoose={(one) =>
          editCamp("", (all) =>
            writeAt(writeAt(all, [...PERSON, "mass_kg"], undefined), [...PERSON, "mass_band"], one),
          )
        }
      />
      <Choices
        title={WORDS.fit.sleeps}
        now={sleeps}
        choices={(["cold", "usual", "warm"] as const).map((how) => [how, WORDS.fit.how[how]])}
        onChoose={(how) => setField([...PERSON, "sleeps"], how === "usual" ? undefined : how)}
      />
      <FieldList>
        <TextField path={[...PERSON, "name"]} label={WORDS.fit.name} />
        <NumberField path={[...PERSON, "age"]} label={WORDS.fit.age} note={WORDS.fit.ageNote} />
        <DayField path={["date"]} label={WORDS.fit.out} />
      </FieldList>
    </div>
  );
}

function sayWhole(value: number): string {
  return value < 0 ? `\u2212${Math.abs(value)}` : String(value);
}

interface StepperProps {
  readonly title: string;
  readonly shown: string;
  readonly less: string;
  readonly more: string;
  readonly onStep: (by: 1 | -1) => void;
}

/** One figure between two things to press. */
function Stepper({ title, shown, less, more, onStep }: StepperProps) {
  return (
    <div class="stepper-figure" role="group" aria-label={title}>
      <span class="note soft">{title}</span>
      <Button quick label={less} onPress={() => onStep(-1)}>
        −
      </Button>
      <output class="head" aria-live="polite">
        {shown}
      </output>
      <Button quick label={more} onPress={() => onStep(1)}>
        +
      </Button>
    </div>
  );
}

interface ChoicesProps {
  readonly title: string;
  readonly note?: string;
  readonly now: string;
  readonly choices: readonly (readonly [value: string, word: string])[];
  readonly onChoose: (value: string) => void;
}

/** A few things side by side, one of them pressed. */
function Choices({ title, note, now, choices, onChoose }: ChoicesProps) {
  const id = useId();
  return (
    <section>
      <h3 class="fit-title" id={id}>
        {title}
      </h3>
      <div class="fit-choices" role="group" aria-labelledby={id}>
        {choices.map(([value, word]) => (
          <Button key={value} pressed={value === now} onPress={() => onChoose(value)}>
            {word}
          </Button>
        ))}
      </div>
      {note === undefined ? null : <p class="note soft">{note}</p>}
    </section>
  );
}
