import { useSignal } from "@preact/signals";
import { DrawGroundPart } from "../ground/draw-ground-part.tsx";
import { opened } from "../state/camp-store.ts";
import { ChoiceField, FieldList } from "../ui/field.tsx";
import { Dialog } from "../ui/dialog.tsx";
import { PairList } from "../ui/pair-list.tsx";
import { TreeImport } from "../ui/tree-import.tsx";
import { TreePanel } from "../ui/tree-panel.tsx";
import { TreeTable } from "../ui/tree-table.tsx";
import { ObstacleList } from "../ui/obstacle-list.tsx";
import { Working } from "../ui/working.tsx";
import { fill, WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** The ground: every tree in a table for keyboard and screen reader, pairs without a map, and what to keep off. */
export function GroundPage() {
  const open = useSignal<string | undefined>(undefined);
  const ground = opened.value?.camp.ground;
  const trees = ground?.trees ?? [];
  const pairs = ground?.pairs ?? [];
  const tree = trees.find(({ id }) => id === open.value);
  return (
    <CampFrame page="ground">
      <div class="list-page list-page-wide">
        <h2>{WORDS.ground.title}</h2>
        <Working />
        {trees.length === 0 && pairs.length === 0 ? <p class="lead">{WORDS.ground.empty}</p> : null}
        <TreeImport />
        <DrawGroundPart ground={ground} />
        {trees.length === 0 ? null : (
          <>
            <FieldList>
              <ChoiceField
                path={["ground", "source"]}
                label={WORDS.ground.source}
                choices={(["taped", "stepped", "gps"] as const).map((source) => [
                  source,
                  WORDS.ground[source],
                ])}
                silentValue="taped"
              />
            </FieldList>
            <TreeTable trees={trees} onOpen={(id) => (open.value = id)} />
          </>
        )}
        <PairList />
        <ObstacleList obstacles={ground?.obstacles ?? []} />
      </div>
      {tree === undefined ? null : (
        <Dialog title={fill(WORDS.tree.title, { tag: tree.tag })} onClose={() => (open.value = undefined)}>
          <TreePanel key={tree.id} id={tree.id} />
        </Dialog>
      )}
    </CampFrame>
  );
}
