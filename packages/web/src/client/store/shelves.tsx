import type { KitDocument } from "@nightspan/edge";
import { dealtOf } from "../state/kit-use.ts";
import { answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { KitFigure } from "./kit-figure.tsx";
import { lastInspection } from "./inspections.ts";
import { sayDay } from "../state/today.ts";

interface ShelvesProps {
  readonly kit: readonly KitDocument[];
  readonly onOpen: (id: string) => void;
}

/** What goes on which shelf, from the top. */
const SHELVES = [
  ["hammock"],
  ["suspension"],
  ["tarp"],
  ["under"],
  ["over"],
  ["cord", "peg", "connector", "light", "other"],
] as const;

/** The store as it stands: a board for each kind of thing, how many of each, and what is out tonight. */
export function Shelves({ kit, onOpen }: ShelvesProps) {
  return (
    <div class="shelves">
      {SHELVES.map((kinds) => {
        const items = kit.filter(({ kind }) => kinds.some((one) => one === kind));
        return items.length === 0 ? null : (
          <section key={kinds[0]} class="shelf" aria-label={WORDS.kit.shelves[kinds[0]]}>
            <h3 class="shelf-name note">{WORDS.kit.shelves[kinds[0]]}</h3>
            <ul class="board">
              {items.map((item) => (
                <li key={item.id}>
                  <OnShelf item={item} onOpen={() => onOpen(item.id)} />
                </li>
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}

interface OnShelfProps {
  readonly item: KitDocument;
  readonly onOpen: () => void;
}

function OnShelf({ item, onOpen }: OnShelfProps) {
  const state = item.state ?? "in-use";
  const count = item.count ?? 1;
  const out = dealtOf(answer.value?.plan, item);
  const last = lastInspection(item);
  return (
    <Button
      class="on-shelf"
      kind="plain"
      label={fill(WORDS.kit.openItem, { item: item.id, count })}
      onPress={onOpen}
    >
      <span class="on-board">
        <KitFigure kind={item.kind} state={state} />
        <b class="shelf-count">{count}</b>
      </span>
      <span class="shelf-label">
        <b>
          <Name>{item.id}</Name>
        </b>
        <span class="note soft">
          {state === "in-use" ? (out === 0 ? null : fill(WORDS.kit.out, { out, count })) : WORDS.kit[state]}
        </span>
        {last === undefined ? null : (
          <span class="note soft">{fill(WORDS.kit.inspectedOn, { day: sayDay(last.on) })}</span>
        )}
      </span>
    </Button>
  );
}
