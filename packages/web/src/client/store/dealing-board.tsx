import type { KitDocument, SleeperDocument } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { opened } from "../state/camp-store.ts";
import { DEALT, pinItem, pinsOf, type DealtKind } from "../state/kit-use.ts";
import { answer } from "../state/plan-store.ts";
import { Name } from "../ui/name.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { fill, WORDS } from "../words.ts";
import { DRAGGED } from "./dragged.ts";
import { KitFigure } from "./kit-figure.tsx";
import { PinDialog } from "./pin-dialog.tsx";
import { ShelfStrip } from "./shelf-strip.tsx";

interface Slot {
  readonly sleeper: string;
  readonly kind: DealtKind;
}

/** Who gets what: a row for each sleeper, a place for each kind. A thing dropped or chosen there is kept for them. */
export function DealingBoard() {
  const open = useSignal<Slot | undefined>(undefined);
  const document = opened.value?.document;
  if (document === undefined) return null;
  const { sleepers, kit = [] } = document;
  return (
    <div class="dealing">
      <ShelfStrip kit={kit} />
      <ul class="deal-rows">
        {sleepers.map((sleeper) => (
          <li key={sleeper.id}>
            <DealRow
              sleeper={sleeper}
              kit={kit}
              onOpen={(kind) => (open.value = { sleeper: sleeper.id, kind })}
            />
          </li>
        ))}
      </ul>
      {open.value === undefined ? null : (
        <PinDialog {...open.value} onClose={() => (open.value = undefined)} />
      )}
    </div>
  );
}

interface DealRowProps {
  readonly sleeper: SleeperDocument;
  readonly kit: readonly KitDocument[];
  readonly onOpen: (kind: DealtKind) => void;
}

function DealRow({ sleeper, kit, onOpen }: DealRowProps) {
  const berth = answer.value?.plan.berths.find((one) => one.sleeper === sleeper.id);
  const pins = pinsOf(sleeper, kit);
  return (
    <section class="deal-row" aria-label={sleeper.name}>
      <h3 class="deal-who">
        <span class="number-place">
          {berth === undefined ? (
            <span class="number-none" aria-hidden="true" />
          ) : (
            <NumberPlate id={berth.id} verdict={berth.verdict} />
          )}
        </span>
        <Name>{sleeper.name}</Name>
      </h3>
      <div class="deal-slots">
        {DEALT.map((kind) => (
          <DealSlot
            key={kind}
            kind={kind}
            who={sleeper}
            item={pins[kind] ?? berth?.kit[kind]}
            pinned={pins[kind] !== undefined}
            onOpen={() => onOpen(kind)}
          />
        ))}
      </div>
    </section>
  );
}

interface DealSlotProps {
  readonly kind: DealtKind;
  readonly who: SleeperDocument;
  readonly item: string | undefined;
  readonly pinned: boolean;
  readonly onOpen: () => void;
}

/** One place: what is dealt, or a dashed one where nothing is. It takes a thing of its own kind that is dropped on it. */
function DealSlot({ kind, who, item, pinned, onOpen }: DealSlotProps) {
  const over = useSignal(false);
  const names = ["button", "deal-slot"];
  if (item === undefined) names.push("deal-empty");
  if (pinned) names.push("deal-pinned");
  if (over.value) names.push("deal-over");
  const said =
    item === undefined ? WORDS.kit.nothingDealt : pinned ? fill(WORDS.kit.keptItem, { item }) : item;
  return (
    <button
      type="button"
      class={names.join(" ")}
      aria-label={fill(WORDS.kit.slot, { name: who.name, kind: WORDS.kit.kinds[kind], item: said })}
      onClick={onOpen}
      onDragOver={(event) => {
        if (event.dataTransfer?.types.includes(`${DRAGGED}-${kind}`) !== true) return;
        event.preventDefault();
        over.value = true;
      }}
      onDragLeave={() => (over.value = false)}
      onDrop={(event) => {
        over.value = false;
        const dropped = event.dataTransfer?.getData(`${DRAGGED}-${kind}`) ?? "";
        if (dropped === "") return;
        event.preventDefault();
        event.stopPropagation();
        pinItem(who.id, kind, dropped);
      }}
    >
      <KitFigure kind={kind} />
      <span class="note">{item === undefined ? WORDS.kit.none : <Name>{item}</Name>}</span>
      {pinned ? <PinSign /> : null}
    </button>
  );
}

function PinSign() {
  return (
    <svg class="pin-sign" viewBox="0 0 16 24" aria-hidden="true">
      <path d="M3 2H13L11 10L14 14H2L5 10ZM8 14V23" />
    </svg>
  );
}
