import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { Button } from "../ui/button.tsx";
import { Dialog } from "../ui/dialog.tsx";
import { Name } from "../ui/name.tsx";
import { WORDS } from "../words.ts";
import { InspectionPart } from "./inspection-part.tsx";
import { KitFields } from "./kit-fields.tsx";

interface ItemDialogProps {
  readonly id: string;
  readonly onClose: () => void;
}

/** One line of the store in front of its shelf: the looks at it, and all that is known of it. */
export function ItemDialog({ id, onClose }: ItemDialogProps) {
  const kit = opened.value?.document.kit ?? [];
  const index = kit.findIndex((item) => item.id === id);
  const item = kit[index];
  if (item === undefined) return null;
  return (
    <Dialog title={<Name>{item.id}</Name>} onClose={onClose}>
      <p class="soft">{WORDS.kit.kinds[item.kind]}</p>
      <InspectionPart item={item} index={index} />
      <KitFields item={item} index={index} />
      <Button
        kind="plain"
        onPress={() => {
          editCamp("", (document) => writeAt(document, ["kit", index], undefined));
          onClose();
        }}
      >
        {WORDS.kit.remove}
      </Button>
    </Dialog>
  );
}
