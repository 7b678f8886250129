import { readCamp } from "@nightspan/edge";
import { fileFaults } from "../state/open-file.ts";
import { takeShelves } from "../state/store-camp.ts";
import { Button } from "../ui/button.tsx";
import { FileButton } from "../ui/file-button.tsx";
import { WORDS } from "../words.ts";

/** Where the shelves come from: another camp's file, or the example's store. */
export function ShelvesSource() {
  return (
    <div class="pair-of-buttons">
      <FileButton accept=".json,application/json" onFile={(file) => void fromFile(file)}>
        {WORDS.fit.openShelves}
      </FileButton>
      <Button onPress={() => void fromExample()}>{WORDS.fit.exampleShelves}</Button>
    </div>
  );
}

async function fromFile(file: File): Promise<void> {
  const read = readCamp(await file.text());
  if (read.ok) takeShelves(read.value.document.kit ?? []);
  else fileFaults.value = { name: file.name, refusals: read.refusals };
}

async function fromExample(): Promise<void> {
  const { default: text } = await import("../state/demo.camp.json?raw");
  const read = readCamp(text);
  if (!read.ok) throw new Error(`the example has faults: ${JSON.stringify(read.refusals)}`);
  takeShelves(read.value.document.kit ?? []);
}
