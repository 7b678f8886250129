import type { Tree } from "@nightspan/core";
import { trunk } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { sayDay } from "../state/today.ts";
import { fill, WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { Name } from "./name.tsx";

interface TreeTableProps {
  readonly trees: readonly Tree[];
  readonly onOpen: (id: string) => void;
}

const AT_ONCE = 100;

/** Every tree as a row; its tag opens it. */
export function TreeTable({ trees, onOpen }: TreeTableProps) {
  const shown = useSignal(AT_ONCE);
  const wanted = useSignal("");
  const found = trees.filter(({ tag }) => tag.toLowerCase().includes(wanted.value.trim().toLowerCase()));
  const rest = found.length - shown.value;
  return (
    <section>
      <h3 class="section-title">
        {WORDS.ground.trees}, {trees.length}
      </h3>
      <label class="find">
        {WORDS.ground.find}
        <input
          class="input"
          type="search"
          autocomplete="off"
          value={wanted.value}
          onInput={(event) => (wanted.value = event.currentTarget.value)}
        />
      </label>
      <div class="table-frame">
        <table class="trees">
          <thead>
            <tr>
              <th scope="col">{WORDS.ground.tag}</th>
              <th scope="col" class="number-cell">
                {WORDS.ground.trunk}
              </th>
              <th scope="col">{WORDS.ground.condition}</th>
              <th scope="col">{WORDS.ground.looked}</th>
              <th scope="col" class="number-cell wide-cell">
                {WORDS.ground.east}
              </th>
              <th scope="col" class="number-cell wide-cell">
                {WORDS.ground.north}
              </th>
              <th scope="col" class="wide-cell">
                {WORDS.ground.use}
              </th>
            </tr>
          </thead>
          <tbody>
            {found.slice(0, shown.value).map((tree) => (
              <TreeRow key={tree.id} tree={tree} onOpen={onOpen} />
            ))}
          </tbody>
        </table>
      </div>
      {rest > 0 ? (
        <Button size="wide" onPress={() => (shown.value += AT_ONCE)}>
          {fill(WORDS.ground.more, { count: Math.min(rest, AT_ONCE) })}
        </Button>
      ) : null}
    </section>
  );
}

function TreeRow({ tree, onOpen }: { readonly tree: Tree; readonly onOpen: (id: string) => void }) {
  const { id, tag, dbhM, condition, lookedAt, xM, yM, use } = tree;
  return (
    <tr>
      <th scope="row">
        <Button kind="plain" label={fill(WORDS.ground.open, { tag })} onPress={() => onOpen(id)}>
          <Name>{tag}</Name>
        </Button>
      </th>
      <td class="number-cell">{trunk(dbhM)}</td>
      <td>{WORDS.tree[condition]}</td>
      <td>{lookedAt === undefined ? null : <LookedBy {...lookedAt} />}</td>
      <td class="number-cell wide-cell">{xM.toFixed(1)}</td>
      <td class="number-cell wide-cell">{yM.toFixed(1)}</td>
      <td class="wide-cell">{use ? WORDS.ground.yes : WORDS.ground.no}</td>
    </tr>
  );
}

function LookedBy({ by, on }: { readonly by: string; readonly on: string }) {
  return (
    <>
      <span class="wide-word">
        <Name>{by}</Name>,{" "}
      </span>
      <span class="no-wrap">{sayDay(on)}</span>
    </>
  );
}
