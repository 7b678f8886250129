import type { Camp } from "@nightspan/core";
import { canUndo, undoEdit } from "../state/camp-store.ts";
import { LEAST_PLACES, OBSTACLES, SPOTS, type Drawn } from "../state/draw-ground.ts";
import { Button } from "../ui/button.tsx";
import { RefusalList } from "../ui/refusal-list.tsx";
import { fill, WORDS } from "../words.ts";
import {
  begin,
  chosen,
  drawing,
  drawRefusals,
  finish,
  idOf,
  moving,
  places,
  takeOut,
  typed,
} from "./draw-state.ts";
import { DrawByNumbers } from "./draw-by-numbers.tsx";
import { GroundMap } from "./ground-map.tsx";

const KINDS: readonly Drawn[] = ["tree", ...OBSTACLES, ...SPOTS];

/** Drawing the ground: by presses on it, or by numbers for whoever has no pointer. */
export function DrawGroundPart({ ground }: { readonly ground: Camp["ground"] }) {
  const what = drawing.value;
  return (
    <section class="draw">
      <h3 class="section-title">{WORDS.draw.title}</h3>
      <div class="choice-row" role="group" aria-label={WORDS.draw.what}>
        {KINDS.map((kind) => (
          <Button key={kind} pressed={what === kind} onPress={() => begin(what === kind ? undefined : kind)}>
            {WORDS.draw.kinds[kind]}
          </Button>
        ))}
      </div>
      <p role="status">{hintWords(what, tagOf(ground))}</p>
      <Details what={what} />
      <GroundMap ground={ground} />
      <RefusalList refusals={drawRefusals.value} />
      <div class="choice-row">
        {what !== undefined && places.value.length >= LEAST_PLACES[what] ? (
          <Button kind="action" onPress={finish}>
            {WORDS.draw.finish}
          </Button>
        ) : null}
        {what === undefined ? null : <Button onPress={() => begin(undefined)}>{WORDS.draw.drop}</Button>}
        <Picked ground={ground} />
        {canUndo.value ? <Button onPress={undoEdit}>{WORDS.draw.undo}</Button> : null}
      </div>
      <DrawByNumbers ground={ground} />
    </section>
  );
}

function hintWords(what: Drawn | undefined, tag: string): string {
  if (moving.value) return fill(WORDS.draw.pressMove, { tag });
  if (what === undefined) return WORDS.draw.pressTree;
  const least = LEAST_PLACES[what];
  return least === 1
    ? WORDS.draw.pressOne
    : fill(WORDS.draw.pressMore, { count: places.value.length, least });
}

function tagOf(ground: Camp["ground"]): string {
  const id = idOf(chosen.value, "tree/");
  return ground?.trees.find((tree) => tree.id === id)?.tag ?? idOf(chosen.value, "obstacle/") ?? "";
}

/** What can be done with what was picked. */
function Picked({ ground }: { readonly ground: Camp["ground"] }) {
  const ref = chosen.value;
  const tag = tagOf(ground);
  if (ref === undefined || tag === "") return null;
  return (
    <>
      {ref.startsWith("tree/") ? (
        <Button pressed={moving.value} onPress={() => (moving.value = !moving.value)}>
          {fill(WORDS.draw.move, { tag })}
        </Button>
      ) : null}
      <Button onPress={() => takeOut(ref)}>{fill(WORDS.draw.remove, { tag })}</Button>
    </>
  );
}

/** What the next thing drawn is like, besides its place. */
function Details({ what }: { readonly what: Drawn | undefined }) {
  if (what === undefined || SPOTS.some((spot) => spot === what)) return null;
  if (what !== "tree") {
    return (
      <div class="draw-fields">
        <Typed name="reach" label={`${WORDS.draw.reach} [m]`} hint={WORDS.draw.byRule} />
      </div>
    );
  }
  return (
    <div class="draw-fields">
      <Typed name="girth" label={`${WORDS.draw.girth} [cm]`} />
      <Typed name="species" label={WORDS.draw.species} />
      <label class="find">
        {WORDS.draw.condition}
        <select
          class="input"
          value={typed.value.condition}
          onChange={(event) => (typed.value = { ...typed.value, condition: event.currentTarget.value })}
        >
          <option value="">{WORDS.draw.notLooked}</option>
          {(["healthy", "doubtful", "dead"] as const).map((one) => (
            <option key={one} value={one}>
              {WORDS.tree[one]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}

interface TypedProps {
  readonly name: "girth" | "species" | "reach";
  readonly label: string;
  readonly hint?: string;
}

function Typed({ name, label, hint = "" }: TypedProps) {
  return (
    <label class="find">
      {label}
      <input
        class="input"
        autocomplete="off"
        placeholder={hint}
        inputMode={name === "species" ? "text" : "decimal"}
        value={typed.value[name]}
        onInput={(event) => (typed.value = { ...typed.value, [name]: event.currentTarget.value })}
      />
    </label>
  );
}
