import { mistake } from "../state/mistake.ts";
import { saveCampFile } from "../state/save-files.ts";
import { WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { Mark } from "./mark.tsx";

/** Our own mistake, said plainly. The camp is kept and can be saved. */
export function MistakeScreen({ details }: { readonly details: string }) {
  return (
    <main class="mistake" id="content">
      <Mark />
      <h1>{WORDS.mistake.title}</h1>
      <div class="choice-row">
        <Button kind="action" onPress={saveCampFile}>
          {WORDS.mistake.save}
        </Button>
        <Button
          onPress={() => {
            mistake.value = undefined;
            location.hash = "#/";
            location.reload();
          }}
        >
          {WORDS.mistake.again}
        </Button>
      </div>
      <details>
        <summary class="button">{WORDS.mistake.details}</summary>
        <pre class="mistake-details">{details}</pre>
      </details>
    </main>
  );
}
