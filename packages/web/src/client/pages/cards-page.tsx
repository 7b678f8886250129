import { cardBackScene, cardScene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { answer, planRefusals, type Answer } from "../state/plan-store.ts";
import { saveCard } from "../state/save-card.ts";
import { saveCampFile, savePlanFile } from "../state/save-files.ts";
import { Button } from "../ui/button.tsx";
import { Cautions } from "../ui/cautions.tsx";
import { Drawing } from "../ui/drawing.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { RefusalList } from "../ui/refusal-list.tsx";
import { TreesLookedAt } from "../ui/trees-looked-at.tsx";
import { Working } from "../ui/working.tsx";
import { fill, WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

type Paper = "a6" | "a4";

/** A card for each berth, front and back, to print or to save. */
export function CardsPage() {
  const paper = useSignal<Paper>("a4");
  const now = answer.value;
  return (
    <CampFrame page="cards">
      <div class={`cards-page paper-${paper.value}`}>
        <div class="screen-only">
          <h2>{WORDS.cards.title}</h2>
          <Working />
          <RefusalList refusals={planRefusals.value} />
          <div class="choice-row" role="group" aria-label={WORDS.cards.sheet}>
            <Button pressed={paper.value === "a4"} onPress={() => (paper.value = "a4")}>
              {WORDS.cards.a4}
            </Button>
            <Button pressed={paper.value === "a6"} onPress={() => (paper.value = "a6")}>
              {WORDS.cards.a6}
            </Button>
          </div>
          <div class="choice-row">
            <Button kind="action" onPress={() => print()}>
              {WORDS.cards.print}
            </Button>
            <Button onPress={savePlanFile}>{WORDS.files.savePlan}</Button>
            <Button onPress={saveCampFile}>{WORDS.files.save}</Button>
          </div>
          <p class="note soft">{WORDS.cards.duplex}</p>
          {now === undefined ? null : (
            <>
              <TreesLookedAt looked={now.plan.treesLookedAt} />
              <NotChecked plan={now.plan} />
            </>
          )}
        </div>
        {now === undefined ? null : <CardSheets now={now} paper={paper.value} />}
        <div class="screen-only">
          <Cautions />
        </div>
      </div>
    </CampFrame>
  );
}

/** Cards in the order of printing: four fronts and their four backs to a sheet, or one by one. */
function CardSheets({ now: { plan, camp }, paper }: { readonly now: Answer; readonly paper: Paper }) {
  const cards = useMemo(() => {
    const words = { labels, measure };
    return plan.berths.map(({ id }) => ({
      id,
      front: cardScene(plan, camp, id, words),
      back: cardBackScene(plan, camp, id, words),
    }));
  }, [plan]);
  if (cards.length === 0) return <p class="lead">{WORDS.cards.none}</p>;
  return (
    <div class="sheets">
      {inGroups(cards, paper === "a4" ? 4 : 1).map((group) => (
        <div class="sheet-pair" key={group[0]?.id}>
          <div class="card-sheet">
            {group.map(({ id, front }) => (
              <figure key={id} class="card one-ink" aria-label={fill(WORDS.cards.front, { id })}>
                <Drawing scene={front} />
                <figcaption class="screen-only">
                  <Button
                    kind="plain"
                    label={fill(WORDS.cards.saveCard, { id })}
                    onPress={() => saveCard(id)}
                  >
                    {WORDS.cards.save}
                  </Button>
                </figcaption>
              </figure>
            ))}
          </div>
          <div class="card-sheet card-sheet-back">
            {group.map(({ id, back }) => (
              <figure key={id} class="card one-ink" aria-label={fill(WORDS.cards.back, { id })}>
                <Drawing scene={back} />
              </figure>
            ))}
          </div>
        </div>
      ))}
    </div>
  );
}

function inGroups<T>(items: readonly T[], size: number): readonly (readonly T[])[] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, index) =>
    items.slice(index * size, (index + 1) * size),
  );
}
