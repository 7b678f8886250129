import type { CampDocument } from "@nightspan/edge";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { FieldList, NumberField, TextField } from "../ui/field.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { GroupPicture } from "./group-picture.tsx";

const USUAL_REACH_M = 30;

/** Every group with its leader, how far its people may lie, and how they do lie in this plan. */
export function GroupList() {
  const document = opened.value?.document;
  if (document === undefined) return null;
  return (
    <section class="groups">
      {(document.groups ?? []).map((group, index) => (
        <GroupCard key={group.id} group={group} index={index} document={document} />
      ))}
      <Button onPress={addGroup}>{WORDS.sleepers.addGroup}</Button>
    </section>
  );
}

interface GroupCardProps {
  readonly group: NonNullable<CampDocument["groups"]>[number];
  readonly index: number;
  readonly document: CampDocument;
}

function GroupCard({ group, index, document }: GroupCardProps) {
  const now = answer.value;
  const members = document.sleepers.filter((sleeper) => sleeper.group === group.id);
  const leaders = members.filter(({ leads }) => leads === true);
  return (
    <section class="group" aria-label={fill(WORDS.sleepers.groupName, { id: group.id })}>
      {now === undefined ? null : (
        <GroupPicture id={group.id} withinM={group.within_m} plan={now.plan} camp={now.camp} />
      )}
      <div class="group-words">
        <h3>
          <Name>{group.id}</Name>
        </h3>
        <p>
          {leaders.length === 0 ? WORDS.sleepers.nobodyLeads : `${WORDS.sleepers.ledBy} `}
          {leaders.map(({ id, name }, place) => (
            <span key={id}>
              {place === 0 ? "" : ", "}
              <Name>{name}</Name>
            </span>
          ))}
          <span class="soft">
            ,{" "}
            {fill(members.length === 1 ? WORDS.first.sleeper : WORDS.first.sleepers, {
              count: members.length,
            })}
          </span>
        </p>
        <FieldList>
          <NumberField path={["groups", index, "within_m"]} label={WORDS.sleepers.within} unit="m" />
          <TextField path={["groups", index, "zone"]} label={WORDS.sleepers.zone} />
        </FieldList>
        {members.length > 0 ? null : (
          <Button kind="plain" onPress={() => removeGroup(index)}>
            {WORDS.sleepers.removeGroup}
          </Button>
        )}
      </div>
    </section>
  );
}

function addGroup(): void {
  editCamp("", (document) => {
    const groups = document.groups ?? [];
    const taken = new Set(groups.map(({ id }) => id));
    let n = groups.length + 1;
    while (taken.has(fill(WORDS.sleepers.groupGiven, { n }))) n += 1;
    const id = fill(WORDS.sleepers.groupGiven, { n });
    return writeAt(document, ["groups", groups.length], { id, within_m: USUAL_REACH_M });
  });
}

function removeGroup(index: number): void {
  editCamp("", (document) => writeAt(document, ["groups", index], undefined));
}
