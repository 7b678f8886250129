import { useSignal } from "@preact/signals";
import type { SleeperDocument } from "@nightspan/edge";
import { length } from "@nightspan/edge";
import { sleeperName, treeTag } from "../state/camp-names.ts";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt, type DocumentPath } from "../state/document-path.ts";
import { answer, type Answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { ChoiceField, FieldList, FlagField, NumberField, TextField } from "../ui/field.tsx";
import { FindingList } from "../ui/finding-list.tsx";
import { Name } from "../ui/name.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { fill, WORDS } from "../words.ts";
import { WishField } from "./wish-field.tsx";

interface SleeperRowProps {
  readonly sleeper: SleeperDocument;
  readonly index: number;
  readonly only: boolean;
}

/** One sleeper: where they lie and beside whom, and what the plan needs to know of them. */
export function SleeperRow({ sleeper, index, only }: SleeperRowProps) {
  const { id, name } = sleeper;
  // Of a thousand sleepers, only the fields that are looked at are drawn: each lists all the others.
  const open = useSignal(false);
  const now = answer.value;
  const berth = now?.plan.berths.find((one) => one.sleeper === id);
  return (
    <details class="item" name="sleepers" onToggle={(event) => (open.value = event.currentTarget.open)}>
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
          {now === undefined || berth === undefined
            ? WORDS.sleepers.none
            : fill(WORDS.map.tags, {
                head: treeTag(now.camp, berth.headTree),
                foot: treeTag(now.camp, berth.footTree),
              })}
        </span>
      </summary>
      {now === undefined ? null : <BuddyLine now={now} id={id} />}
      {now === undefined ? null : <WishesUnmet now={now} id={id} />}
      {open.value ? <SleeperFields sleeper={sleeper} index={index} /> : null}
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

/** Who looks after whom at night, and whether a call is heard. */
function BuddyLine({ now: { plan, camp }, id }: { readonly now: Answer; readonly id: string }) {
  const buddy = plan.berths.find(({ sleeper }) => sleeper === id)?.buddy;
  if (buddy === undefined) return null;
  const [before = "", after = ""] = fill(buddy.withinCall ? WORDS.sleepers.buddy : WORDS.sleepers.buddyFar, {
    name: "{name}",
    apart: length(buddy.apartM, 0),
  }).split("{name}");
  return (
    <p class="buddy">
      {before}
      <Name>{sleeperName(camp, buddy.sleeper)}</Name>
      {after}
    </p>
  );
}

/** What the plan could not do of what somebody wished. */
function WishesUnmet({ now: { plan, camp }, id }: { readonly now: Answer; readonly id: string }) {
  const unmet = plan.findings.filter(
    ({ rule, subject, verdict }) => WISHES.has(rule) && subject === id && verdict !== "clear",
  );
  return <FindingList findings={unmet} camp={camp} />;
}

const WISHES: ReadonlySet<string> = new Set(["people.near", "people.apart"]);

function SleeperFields({ sleeper, index }: { readonly sleeper: SleeperDocument; readonly index: number }) {
  const path: DocumentPath = ["sleepers", index];
  const groups = opened.value?.document.groups ?? [];
  return (
    <FieldList>
      <TextField path={[...path, "name"]} label={WORDS.sleepers.name} />
      <NumberField path={[...path, "stature_m"]} label={WORDS.sleepers.stature} unit="m" />
      <NumberField path={[...path, "mass_kg"]} label={WORDS.sleepers.mass} unit="kg" hint="80" />
      <NumberField path={[...path, "age"]} label={WORDS.sleepers.age} note={WORDS.sleepers.ageNote} />
      <NumberField path={[...path, "step_m"]} label={WORDS.sleepers.step} unit="m" />
      <ChoiceField
        path={[...path, "sleeps"]}
        label={WORDS.sleepers.sleeps}
        choices={(["cold", "usual", "warm"] as const).map((how) => [how, WORDS.sleepers.how[how]])}
        silentValue="usual"
      />
      <FlagField path={[...path, "hat"]} label={WORDS.sleepers.hat} silent={false} />
      <FlagField path={[...path, "beginner"]} label={WORDS.sleepers.beginner} silent={false} />
      <ChoiceField
        path={[...path, "group"]}
        label={WORDS.sleepers.group}
        choices={[["", WORDS.sleepers.noGroup], ...groups.map((group) => [group.id, group.id] as const)]}
      />
      <FlagField path={[...path, "leads"]} label={WORDS.sleepers.leads} silent={false} />
      <WishField sleeper={sleeper} index={index} kind="near" />
      <WishField sleeper={sleeper} index={index} kind="apart" />
    </FieldList>
  );
}
