import type { CampDocument, PairDocument } from "@nightspan/edge";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt, type DocumentPath } from "../state/document-path.ts";
import { WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { FieldList, FlagField, NumberField, TextField } from "./field.tsx";
import { Name } from "./name.tsx";
import { PairLook } from "./pair-look.tsx";

/** Pairs of trees known by tag and distance alone: most groups have no coordinates. */
export function PairList() {
  const pairs = opened.value?.document.ground?.pairs ?? [];
  return (
    <section>
      <h3 class="section-title">{WORDS.ground.pairs}</h3>
      <ul class="cards-list">
        {pairs.map((pair, index) => (
          <li key={pair.id}>
            <PairRow pair={pair} index={index} />
          </li>
        ))}
      </ul>
      <Button size="wide" onPress={addPair}>
        {WORDS.ground.pace}
      </Button>
    </section>
  );
}

function PairRow({ pair, index }: { readonly pair: PairDocument; readonly index: number }) {
  const path: DocumentPath = ["ground", "pairs", index];
  return (
    <details class="item" name="pairs">
      <summary class="item-top">
        <span class="row-name">
          <Name>{pair.trees[0]}</Name> <span class="soft">{WORDS.ground.to}</span>{" "}
          <Name>{pair.trees[1]}</Name>
        </span>
      </summary>
      <FieldList>
        <TextField path={[...path, "trees", 0]} label={WORDS.ground.firstTree} />
        <TextField path={[...path, "trees", 1]} label={WORDS.ground.secondTree} />
        {pair.span_m === undefined ? (
          <NumberField path={[...path, "steps"]} label={WORDS.ground.steps} />
        ) : (
          <NumberField path={[...path, "span_m"]} label={WORDS.ground.span} unit="m" />
        )}
        <FlagField path={[...path, "use"]} label={WORDS.ground.usePair} silent />
      </FieldList>
      <PairLook pairId={pair.id} />
      <Button kind="plain" onPress={() => editCamp("", (document) => withoutPair(document, index))}>
        {WORDS.ground.removePair}
      </Button>
    </details>
  );
}

const USUAL_STEPS = 6;

function addPair(): void {
  editCamp("", (document) => {
    const pairs = document.ground?.pairs ?? [];
    const taken = new Set(pairs.map(({ id }) => id));
    let n = pairs.length + 1;
    while (taken.has(`p${n}`)) n += 1;
    const pair = { id: `p${n}`, trees: [`${n}a`, `${n}b`], steps: USUAL_STEPS };
    return writeAt(document, ["ground", "pairs", pairs.length], pair);
  });
}

/** The last pair takes its list along: a list of pairs has at least one. */
function withoutPair(document: CampDocument, index: number): unknown {
  const only = document.ground?.pairs?.length === 1;
  return writeAt(document, only ? ["ground", "pairs"] : ["ground", "pairs", index], undefined);
}
