import type { KitDocument } from "@nightspan/edge";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt, type DocumentPath } from "../state/document-path.ts";
import { Button } from "../ui/button.tsx";
import { ChoiceField, FieldList, FlagField, NumberField } from "../ui/field.tsx";
import { Name } from "../ui/name.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** What is in the store: hammocks and suspensions are dealt, the rest is kept as it is. */
export function KitPage() {
  const kit = opened.value?.document.kit ?? [];
  return (
    <CampFrame page="kit">
      <div class="list-page">
        <h2>{WORDS.kit.title}</h2>
        <Working />
        {kit.length === 0 ? <p class="lead">{WORDS.kit.empty}</p> : null}
        <ul class="cards-list">
          {kit.map((item, index) => (
            <li key={item.id}>
              <KitRow item={item} index={index} />
            </li>
          ))}
        </ul>
        <div class="pair-of-buttons">
          <Button
            kind="action"
            onPress={() => addKit({ kind: "hammock", length_m: 3, width_m: 1.5 }, "hammock")}
          >
            {WORDS.kit.addHammock}
          </Button>
          <Button
            kind="action"
            onPress={() => addKit({ kind: "suspension", type: "tied-webbing", strap_width_mm: 25 }, "straps")}
          >
            {WORDS.kit.addSuspension}
          </Button>
        </div>
      </div>
    </CampFrame>
  );
}

function KitRow({ item, index }: { readonly item: KitDocument; readonly index: number }) {
  const path: DocumentPath = ["kit", index];
  return (
    <details class="item" name="kit">
      <summary class="item-top">
        <span class="item-count">{item.count} ×</span>
        <span class="row-name">
          <Name>{item.id}</Name>
        </span>
        <span class="note soft">{WORDS.kit.kinds[item.kind]}</span>
      </summary>
      <FieldList>
        <NumberField path={[...path, "count"]} label={WORDS.kit.count} />
        {item.kind === "hammock" ? <HammockFields path={path} /> : null}
        {item.kind === "suspension" ? <SuspensionFields path={path} /> : null}
        <ChoiceField
          path={[...path, "state"]}
          label={WORDS.kit.state}
          choices={(["in-use", "quarantined", "retired"] as const).map((state) => [state, WORDS.kit[state]])}
          silentValue="in-use"
        />
      </FieldList>
      {item.kind === "hammock" || item.kind === "suspension" ? null : (
        <p class="note soft">{WORDS.kit.other}</p>
      )}
      <Button kind="plain" onPress={() => editCamp("", (document) => writeAt(document, path, undefined))}>
        {WORDS.kit.remove}
      </Button>
    </details>
  );
}

function HammockFields({ path }: { readonly path: DocumentPath }) {
  return (
    <>
      <NumberField path={[...path, "length_m"]} label={WORDS.kit.length} unit="m" />
      <NumberField path={[...path, "width_m"]} label={WORDS.kit.width} unit="m" />
      <NumberField path={[...path, "ridgeline_m"]} label={WORDS.kit.ridgeline} unit="m" />
      <NumberField path={[...path, "max_user_kg"]} label={WORDS.kit.maxUser} unit="kg" />
    </>
  );
}

function SuspensionFields({ path }: { readonly path: DocumentPath }) {
  return (
    <>
      <ChoiceField
        path={[...path, "type"]}
        label={WORDS.kit.type}
        choices={(["tied-webbing", "whoopie-sling"] as const).map((type) => [type, WORDS.kit[type]])}
      />
      <NumberField path={[...path, "min_m"]} label={WORDS.kit.min} unit="m" />
      <NumberField path={[...path, "max_m"]} label={WORDS.kit.max} unit="m" />
      <NumberField path={[...path, "strap_width_mm"]} label={WORDS.kit.strapWidth} unit="mm" />
      <NumberField path={[...path, "rated_load_n"]} label={WORDS.kit.rated} unit="N" />
      <NumberField path={[...path, "breaking_n"]} label={WORDS.kit.breaking} unit="N" />
      <FlagField path={[...path, "through_own_eye"]} label={WORDS.kit.throughEye} silent={false} />
    </>
  );
}

function addKit(item: Readonly<Record<string, unknown>>, name: string): void {
  editCamp("", (document) => {
    const kit = document.kit ?? [];
    const taken = new Set(kit.map(({ id }) => id));
    let n = 1;
    while (taken.has(`${name} ${n}`)) n += 1;
    return writeAt(document, ["kit", kit.length], { id: `${name} ${n}`, count: 1, ...item });
  });
}
