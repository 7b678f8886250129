import { canRedo, canUndo, opened, redoEdit, undoEdit } from "../state/camp-store.ts";
import { answer } from "../state/plan-store.ts";
import { CAMP_PAGES } from "../state/route.ts";
import { saveCampFile, savePlanFile } from "../state/save-files.ts";
import { fill, WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { Dialog } from "./dialog.tsx";
import { LinkButton } from "./link-button.tsx";
import { Name } from "./name.tsx";
import { ThemeSelect } from "./theme-select.tsx";

interface CampMenuProps {
  readonly page: string;
  readonly onClose: () => void;
}

/** All that can be done with the camp as a whole: its parts, undo, copies, colours. */
export function CampMenu({ page, onClose }: CampMenuProps) {
  const unknown = opened.value?.unknownFields.length ?? 0;
  return (
    <Dialog title={<Name>{opened.value?.camp.name ?? ""}</Name>} onClose={onClose}>
      <nav class="menu-pages narrow-only" aria-label={WORDS.nav.label} onClick={onClose}>
        {CAMP_PAGES.map((name) => (
          <LinkButton key={name} to={{ page: name }} current={name === page}>
            {WORDS.nav[name]}
          </LinkButton>
        ))}
      </nav>
      <div class="choice-row">
        <Button quick onPress={undoEdit} offBecause={canUndo.value ? undefined : WORDS.app.nothingToUndo}>
          {WORDS.app.undo}
        </Button>
        <Button quick onPress={redoEdit} offBecause={canRedo.value ? undefined : WORDS.app.nothingToRedo}>
          {WORDS.app.redo}
        </Button>
      </div>
      <div class="choice-row">
        <Button onPress={saveCampFile}>{WORDS.files.save}</Button>
        {answer.value === undefined ? null : <Button onPress={savePlanFile}>{WORDS.files.savePlan}</Button>}
      </div>
      {unknown === 0 ? null : <p class="note">{fill(WORDS.files.unknown, { count: unknown })}</p>}
      <h3>{WORDS.theme.title}</h3>
      <ThemeSelect />
      <LinkButton kind="plain" to={{ page: "first" }}>
        {WORDS.app.firstScreen}
      </LinkButton>
    </Dialog>
  );
}
