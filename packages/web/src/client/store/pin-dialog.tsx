import { opened } from "../state/camp-store.ts";
import { dealtOf, pinItem, pinsOf, type DealtKind } from "../state/kit-use.ts";
import { answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { Dialog } from "../ui/dialog.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { KitFigure } from "./kit-figure.tsx";

interface PinDialogProps {
  readonly sleeper: string;
  readonly kind: DealtKind;
  readonly onClose: () => void;
}

/** What to keep for somebody, by press or key: every line of that kind, or whatever the plan deals. */
export function PinDialog({ sleeper, kind, onClose }: PinDialogProps) {
  const document = opened.value?.document;
  const person = document?.sleepers.find(({ id }) => id === sleeper);
  if (document === undefined || person === undefined) return null;
  const kit = document.kit ?? [];
  const kept = pinsOf(person, kit)[kind];
  const keep = (item: string | undefined) => (): void => {
    pinItem(sleeper, kind, item);
    onClose();
  };
  return (
    <Dialog
      title={
        <>
          {WORDS.kit.shelves[kind]}, <Name>{person.name}</Name>
        </>
      }
      onClose={onClose}
    >
      <div class="pin-choices">
        <Button size="wide" pressed={kept === undefined} onPress={keep(undefined)}>
          {WORDS.kit.asDealt}
        </Button>
        {kit
          .filter((item) => item.kind === kind && (item.state ?? "in-use") === "in-use")
          .map((item) => (
            <Button key={item.id} size="wide" pressed={kept === item.id} onPress={keep(item.id)}>
              <KitFigure kind={kind} />
              <span class="row-name">
                <Name>{item.id}</Name>
              </span>
              <span class="note">
                {fill(WORDS.kit.left, {
                  left: (item.count ?? 1) - dealtOf(answer.value?.plan, item),
                  count: item.count ?? 1,
                })}
              </span>
            </Button>
          ))}
      </div>
    </Dialog>
  );
}
