import { useSignal } from "@preact/signals";
import { opened } from "../state/camp-store.ts";
import { partOf } from "../state/route.ts";
import { CutSheet } from "../store/cut-sheet.tsx";
import { DealingBoard } from "../store/dealing-board.tsx";
import { ItemDialog } from "../store/item-dialog.tsx";
import { NewItems } from "../store/new-items.tsx";
import { StoreFiles } from "../store/store-files.tsx";
import { PackingSheet } from "../store/packing-sheet.tsx";
import { Shelves } from "../store/shelves.tsx";
import { Shortages } from "../store/shortages.tsx";
import { PartLinks } from "../ui/part-links.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

const PARTS = ["store", "dealing", "packing", "cuts"] as const;

/** The store on its shelves, who gets what of it, what is packed, and what is cut. */
export function KitPage() {
  const part = partOf(PARTS);
  return (
    <CampFrame page="kit">
      <div class="kit-page">
        <h2>{WORDS.kit.title}</h2>
        <PartLinks
          page="kit"
          label={WORDS.kit.partsLabel}
          now={part}
          parts={PARTS.map((name) => [name, WORDS.kit.parts[name]])}
        />
        <Working />
        <PartShown part={part} />
      </div>
    </CampFrame>
  );
}

function PartShown({ part }: { readonly part: string }) {
  if (part === "dealing") {
    return (
      <>
        <Shortages />
        <p class="note soft">{WORDS.kit.dealNote}</p>
        <DealingBoard />
      </>
    );
  }
  if (part === "packing") return <PackingSheet />;
  if (part === "cuts") return <CutSheet />;
  return <Store />;
}

function Store() {
  const open = useSignal<string | undefined>(undefined);
  const kit = opened.value?.document.kit ?? [];
  return (
    <>
      {kit.length === 0 ? <p class="lead">{WORDS.kit.empty}</p> : null}
      <Shelves kit={kit} onOpen={(id) => (open.value = id)} />
      <NewItems onAdded={(id) => (open.value = id)} />
      <StoreFiles />
      {open.value === undefined ? null : (
        <ItemDialog id={open.value} onClose={() => (open.value = undefined)} />
      )}
    </>
  );
}
