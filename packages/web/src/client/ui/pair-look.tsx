import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { settings } from "../state/settings.ts";
import { today } from "../state/today.ts";
import { WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { LookerField } from "./looker-field.tsx";

/** For a pair without a map: one look at both trees, by name and day. */
export function PairLook({ pairId }: { readonly pairId: string }) {
  const pairs = opened.value?.document.ground?.pairs ?? [];
  const index = pairs.findIndex(({ id }) => id === pairId);
  const pair = pairs[index];
  if (pair === undefined || pair.looked_at !== undefined) return null;
  const by = settings.value.looker.trim();
  return (
    <>
      <LookerField />
      <Button
        kind="action"
        size="wide"
        offBecause={by === "" ? WORDS.tree.nameFirst : undefined}
        onPress={() => {
          const on = opened.peek()?.camp.date ?? today();
          editCamp("", (document) => writeAt(document, ["ground", "pairs", index, "looked_at"], { by, on }));
        }}
      >
        {WORDS.tonight.looked}
      </Button>
    </>
  );
}
