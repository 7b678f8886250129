import {
  importInspections,
  importKit,
  readInspectionsCsv,
  readKitCsv,
  writeInspectionsCsv,
  writeKitCsv,
} from "@nightspan/edge";
import { editCamp, opened } from "../state/camp-store.ts";
import { fileName, saveFile } from "../state/save-files.ts";
import { Button } from "../ui/button.tsx";
import { ListImport } from "../ui/list-import.tsx";
import { WORDS } from "../words.ts";

/** The store as a list, in and out, and the log of its inspections. */
export function StoreFiles() {
  const document = opened.value?.document;
  if (document === undefined) return null;
  const save = (what: string, csv: string) => (): void => {
    saveFile(`${fileName(`${document.name} ${what}`)}.csv`, csv, "text/csv");
  };
  return (
    <section class="store-files">
      <ListImport
        accept=".csv,text/csv"
        title={WORDS.kit.openList}
        note={WORDS.kit.openListNote}
        done={WORDS.kit.listDone}
        read={readKitCsv}
        take={(list) => editCamp("", (camp) => importKit(camp, list))}
      />
      <ListImport
        accept=".csv,text/csv"
        title={WORDS.kit.openLog}
        note={WORDS.kit.openLogNote}
        done={WORDS.kit.logDone}
        read={(text) => readInspectionsCsv(text, document)}
        take={(list) => editCamp("", (camp) => importInspections(camp, list))}
      />
      <div class="pair-of-buttons">
        <Button onPress={save("kit", writeKitCsv(document))}>{WORDS.kit.saveList}</Button>
        <Button onPress={save("inspections", writeInspectionsCsv(document))}>{WORDS.kit.saveLog}</Button>
      </div>
    </section>
  );
}
