import type { Refusal } from "@nightspan/core";
import { importTrees, readTreesCsv, readTreesGeoJson, type TreeList } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { editCamp } from "../state/camp-store.ts";
import { fill, WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { sayGot } from "./fault-note.tsx";
import { FileButton } from "./file-button.tsx";

type Import =
  | { readonly state: "none" }
  | { readonly state: "refused"; readonly refusals: readonly Refusal[] }
  | { readonly state: "asking"; readonly list: TreeList }
  | { readonly state: "done"; readonly count: number };

/** Trees from a list. Nothing comes in while a row is bad, until the reader leaves the bad rows out. */
export function TreeImport() {
  const state = useSignal<Import>({ state: "none" });
  const bringIn = (list: TreeList): void => {
    const refusals = editCamp("", (document) => importTrees(document, list));
    state.value =
      refusals.length > 0 ? { state: "refused", refusals } : { state: "done", count: list.rows.length };
  };
  const read = async (file: File): Promise<void> => {
    const text = await file.text();
    const outcome = /\.(geo)?json$/i.test(file.name) ? readTreesGeoJson(text) : readTreesCsv(text);
    if (!outcome.ok) state.value = { state: "refused", refusals: outcome.refusals };
    else if (outcome.value.bad.length > 0) state.value = { state: "asking", list: outcome.value };
    else bringIn(outcome.value);
  };
  return (
    <section class="import">
      <FileButton accept=".csv,text/csv,.geojson,.json" size="wide" onFile={(file) => void read(file)}>
        {WORDS.ground.import}
      </FileButton>
      <p class="note soft">{WORDS.ground.importNote}</p>
      <ImportState now={state.value} onSkip={bringIn} onCancel={() => (state.value = { state: "none" })} />
    </section>
  );
}

interface ImportStateProps {
  readonly now: Import;
  readonly onSkip: (list: TreeList) => void;
  readonly onCancel: () => void;
}

function ImportState({ now, onSkip, onCancel }: ImportStateProps) {
  if (now.state === "none") return null;
  if (now.state === "done") return <p role="status">{fill(WORDS.ground.imported, { count: now.count })}</p>;
  if (now.state === "refused") {
    return (
      <ul class="faults" role="status">
        {now.refusals.map((refusal) => (
          <Fault key={`${refusal.field} ${refusal.need}`} place="" refusal={refusal} />
        ))}
      </ul>
    );
  }
  const { bad } = now.list;
  return (
    <div role="status">
      <h4 class="lead">
        {bad.length === 1 ? WORDS.ground.badRow : fill(WORDS.ground.badRows, { count: bad.length })}
      </h4>
      <ul class="faults">
        {bad.flatMap(({ place, refusals }) =>
          refusals.map((refusal) => (
            <Fault key={`${place} ${refusal.field} ${refusal.need}`} place={`${place}, `} refusal={refusal} />
          )),
        )}
      </ul>
      <div class="pair-of-buttons">
        {now.list.rows.length === 0 ? null : (
          <Button kind="action" onPress={() => onSkip(now.list)}>
            {WORDS.ground.leaveOut}
          </Button>
        )}
        <Button onPress={onCancel}>{WORDS.ground.cancelImport}</Button>
      </div>
    </div>
  );
}

function Fault({ place, refusal }: { readonly place: string; readonly refusal: Refusal }) {
  return (
    <li class="fault-row">
      <b>
        {place}
        {refusal.field}
      </b>
      <span>{sayGot(refusal.got)}</span>
      <span>{fill(WORDS.files.need, { need: refusal.need })}</span>
    </li>
  );
}
