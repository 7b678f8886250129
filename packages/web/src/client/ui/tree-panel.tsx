import type { TreeDocument } from "@nightspan/edge";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt, type DocumentPath } from "../state/document-path.ts";
import { remember, settings } from "../state/settings.ts";
import { sayDay, today } from "../state/today.ts";
import { fill, WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { ChoiceField, FieldList, FlagField, NumberField, TextField } from "./field.tsx";
import { LookerField } from "./looker-field.tsx";
import { Name } from "./name.tsx";

type Seen = "healthy" | "doubtful" | "dead";

/** What somebody who stands at the tree sees and measures; the plan follows at once. */
export function TreePanel({ id }: { readonly id: string }) {
  const trees = opened.value?.document.ground?.trees ?? [];
  const index = trees.findIndex((tree) => tree.id === id);
  const tree = trees[index];
  if (tree === undefined) return null;
  const path: DocumentPath = ["ground", "trees", index];
  const girth = tree.girth_cm !== undefined && tree.dbh_cm === undefined;
  return (
    <>
      <LookedLine tree={tree} />
      <p class="note">{WORDS.tree.look}</p>
      <LookButtons path={path} day={opened.value?.camp.date ?? today()} />
      <LookerField />
      <FieldList>
        <ChoiceField
          path={[...path, "condition"]}
          label={WORDS.tree.condition}
          choices={CONDITIONS.map((condition) => [condition, WORDS.tree[condition]])}
          silentValue="not-looked-at"
        />
        {girth ? (
          <NumberField path={[...path, "girth_cm"]} label={WORDS.tree.girth} unit="cm" />
        ) : (
          <NumberField path={[...path, "dbh_cm"]} label={WORDS.tree.dbh} unit="cm" />
        )}
        <TextField path={[...path, "species"]} label={WORDS.tree.species} />
        <FlagField path={[...path, "use"]} label={WORDS.tree.use} silent />
      </FieldList>
    </>
  );
}

const CONDITIONS = ["not-looked-at", "healthy", "doubtful", "dead"] as const;

function LookedLine({ tree }: { readonly tree: TreeDocument }) {
  const { looked_at: looked, condition = "not-looked-at" } = tree;
  if (looked === undefined)
    return <p class="lead">{fill(WORDS.tree.nobody, { tag: tree.tag ?? tree.id })}</p>;
  const [before = "", after = ""] = fill(WORDS.tree.looked, { by: "{by}", on: sayDay(looked.on) }).split(
    "{by}",
  );
  return (
    <p class="lead">
      {before}
      <Name>{looked.by}</Name>
      {after}: {WORDS.tree[condition]}
    </p>
  );
}

function LookButtons({ path, day }: { readonly path: DocumentPath; readonly day: string }) {
  const looker = settings.value.looker.trim();
  const off = looker === "" ? WORDS.tree.nameFirst : undefined;
  const see = (condition: Seen) => (): void => {
    remember({ looker });
    editCamp("", (document) => {
      const seen = writeAt(document, [...path, "condition"], condition);
      return writeAt(seen, [...path, "looked_at"], { by: looker, on: day });
    });
  };
  return (
    <>
      <div class="look-buttons">
        <Button kind="action" onPress={see("healthy")} offBecause={off}>
          {WORDS.tree.iLooked}
        </Button>
        <Button onPress={see("doubtful")} offBecause={off}>
          {WORDS.tree.iDoubt}
        </Button>
        <Button onPress={see("dead")} offBecause={off}>
          {WORDS.tree.itIsDead}
        </Button>
      </div>
      {off === undefined ? null : <p class="note">{off}</p>}
    </>
  );
}
