import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { FieldList, FlagField, NumberField, TextField } from "../ui/field.tsx";
import { Name } from "../ui/name.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { Working } from "../ui/working.tsx";
import { fill, WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** Who sleeps, and what of them the plan needs. */
export function SleepersPage() {
  const sleepers = opened.value?.document.sleepers ?? [];
  return (
    <CampFrame page="sleepers">
      <div class="list-page">
        <h2>{WORDS.sleepers.title}</h2>
        <Working />
        <p class="note soft">{WORDS.sleepers.massNote}</p>
        <ul class="cards-list">
          {sleepers.map((sleeper, index) => (
            <li key={sleeper.id}>
              <SleeperRow id={sleeper.id} name={sleeper.name} index={index} only={sleepers.length === 1} />
            </li>
          ))}
        </ul>
        <Button kind="action" size="spot" onPress={addSleeper}>
          {WORDS.sleepers.add}
        </Button>
      </div>
    </CampFrame>
  );
}

interface SleeperRowProps {
  readonly id: string;
  readonly name: string;
  readonly index: number;
  readonly only: boolean;
}

function SleeperRow({ id, name, index, only }: SleeperRowProps) {
  const berth = answer.value?.plan.berths.find((one) => one.sleeper === id);
  return (
    <details class="item" name="sleepers">
      <summary class="item-top">
        <span class="number-place">
          {berth === undefined ? (
            <span class="number-none" aria-hidden="true" />
          ) : (
            <NumberPlate id={berth.id} verdict={berth.verdict} />
          )}
        </span>
        <span class="row-name">
          <Name>{name}</Name>
        </span>
        <span class="note soft">
          {berth === undefined
            ? WORDS.sleepers.none
            : fill(WORDS.map.tags, { head: berth.headTree, foot: berth.footTree })}
        </span>
      </summary>
      <FieldList>
        <TextField path={["sleepers", index, "name"]} label={WORDS.sleepers.name} />
        <NumberField path={["sleepers", index, "stature_m"]} label={WORDS.sleepers.stature} unit="m" />
        <NumberField path={["sleepers", index, "mass_kg"]} label={WORDS.sleepers.mass} unit="kg" hint="80" />
        <NumberField path={["sleepers", index, "step_m"]} label={WORDS.sleepers.step} unit="m" />
        <TextField path={["sleepers", index, "group"]} label={WORDS.sleepers.group} />
        <FlagField path={["sleepers", index, "leads"]} label={WORDS.sleepers.leads} silent={false} />
      </FieldList>
      <Button
        kind="plain"
        label={fill(WORDS.sleepers.removeName, { name })}
        offBecause={only ? WORDS.sleepers.last : undefined}
        onPress={() => editCamp("", (document) => writeAt(document, ["sleepers", index], undefined))}
      >
        {WORDS.sleepers.remove}
      </Button>
    </details>
  );
}

const USUAL_STATURE_M = 1.75;

function addSleeper(): void {
  editCamp("", (document) => {
    const taken = new Set(document.sleepers.map(({ id }) => id));
    let n = document.sleepers.length + 1;
    while (taken.has(`s${n}`)) n += 1;
    const sleeper = { id: `s${n}`, name: fill(WORDS.sleepers.given, { n }), stature_m: USUAL_STATURE_M };
    return writeAt(document, ["sleepers", document.sleepers.length], sleeper);
  });
}
