import type { KitDocument } from "@nightspan/edge";
import { dealtOf, isDealt } from "../state/kit-use.ts";
import { answer } from "../state/plan-store.ts";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { DRAGGED } from "./dragged.ts";
import { KitFigure } from "./kit-figure.tsx";

/** The shelf beside the sleepers: what there is of each thing, to be dragged to whom it is kept for. */
export function ShelfStrip({ kit }: { readonly kit: readonly KitDocument[] }) {
  const there = kit.filter(({ kind, state = "in-use" }) => isDealt(kind) && state === "in-use");
  return (
    <ul class="shelf-strip" aria-label={WORDS.kit.strip}>
      {there.map((item) => (
        <li
          key={item.id}
          class="strip-item"
          draggable
          onDragStart={(event) => event.dataTransfer?.setData(`${DRAGGED}-${item.kind}`, item.id)}
        >
          <KitFigure kind={item.kind} />
          <span class="note">
            <Name>{item.id}</Name>
          </span>
          <b class="note">
            {fill(WORDS.kit.left, {
              left: (item.count ?? 1) - dealtOf(answer.value?.plan, item),
              count: item.count ?? 1,
            })}
          </b>
        </li>
      ))}
    </ul>
  );
}
