import type { KitDocument } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { editCamp } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { Button } from "../ui/button.tsx";
import { WORDS } from "../words.ts";
import { KitFigure } from "./kit-figure.tsx";

type Kind = KitDocument["kind"];

/** A new line starts with what the file cannot do without. */
const STARTS: Readonly<Record<Kind, Readonly<Record<string, unknown>>>> = {
  hammock: { length_m: 3, width_m: 1.5 },
  suspension: { type: "tied-webbing", strap_width_mm: 25 },
  tarp: { shape: "rectangle", ridge_m: 3.4, width_m: 3 },
  under: {},
  over: {},
  cord: {},
  peg: {},
  connector: {},
  light: {},
  other: {},
};

const KINDS = [
  "hammock",
  "suspension",
  "tarp",
  "under",
  "over",
  "cord",
  "peg",
  "light",
  "connector",
  "other",
] as const;

/** Puts a new line on a shelf, or brings in a whole list. */
export function NewItems({ onAdded }: { readonly onAdded: (id: string) => void }) {
  const choosing = useSignal(false);
  return (
    <section class="new-items">
      <div class="pair-of-buttons">
        <Button kind="action" pressed={choosing.value} onPress={() => (choosing.value = !choosing.value)}>
          {WORDS.kit.add}
        </Button>
      </div>
      {choosing.value ? (
        <div class="new-kinds" role="group" aria-label={WORDS.kit.addWhat}>
          {KINDS.map((kind) => (
            <Button
              key={kind}
              onPress={() => {
                choosing.value = false;
                onAdded(addItem(kind));
              }}
            >
              <KitFigure kind={kind} />
              {WORDS.kit.kinds[kind]}
            </Button>
          ))}
        </div>
      ) : null}
    </section>
  );
}

function addItem(kind: Kind): string {
  let id: string = kind;
  editCamp("", (document) => {
    const kit = document.kit ?? [];
    const taken = new Set(kit.map((item) => item.id));
    let n = 1;
    while (taken.has(`${kind} ${n}`)) n += 1;
    id = `${kind} ${n}`;
    return writeAt(document, ["kit", kit.length], { id, kind, count: 1, ...STARTS[kind] });
  });
  return id;
}
