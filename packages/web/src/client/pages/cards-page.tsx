import {
  angleCardScene,
  cardBackScene,
  cardScene,
  pocketTables,
  pocketTableScene,
  type Scene,
} from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { CampSheets } from "../papers/camp-sheets.tsx";
import { answer, planRefusals, type Answer } from "../state/plan-store.ts";
import { partOf } from "../state/route.ts";
import { saveCard } from "../state/save-card.ts";
import { saveCampFile, savePlanFile } from "../state/save-files.ts";
import { Button } from "../ui/button.tsx";
import { CardSheets, type Paper } from "../ui/card-sheets.tsx";
import { Cautions } from "../ui/cautions.tsx";
import { Drawing } from "../ui/drawing.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { PartLinks } from "../ui/part-links.tsx";
import { RefusalList } from "../ui/refusal-list.tsx";
import { TreesLookedAt } from "../ui/trees-looked-at.tsx";
import { Working } from "../ui/working.tsx";
import { fill, WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

const PRINTED = ["berths", "pocket", "papers"] as const;

/** A card for each berth, front and back, to print or to save. */
export function CardsPage() {
  const paper = useSignal<Paper>("a4");
  const printed = partOf(PRINTED);
  const now = answer.value;
  return (
    <CampFrame page="cards">
      <div class={`cards-page paper-${paper.value}`}>
        <div class="screen-only">
          <h2>{WORDS.cards.title}</h2>
          <Working />
          <RefusalList refusals={planRefusals.value} />
          <PartLinks
            page="cards"
            label={WORDS.cards.what}
            now={printed}
            parts={[
              ["berths", WORDS.cards.berths],
              ["pocket", WORDS.cards.tools],
              ["papers", WORDS.cards.papers],
            ]}
          />
          {printed === "papers" ? null : (
            <div class="choice-row" role="group" aria-label={WORDS.cards.sheet}>
              <Button pressed={paper.value === "a4"} onPress={() => (paper.value = "a4")}>
                {WORDS.cards.a4}
              </Button>
              <Button pressed={paper.value === "a6"} onPress={() => (paper.value = "a6")}>
                {WORDS.cards.a6}
              </Button>
            </div>
          )}
          <div class="choice-row">
            <Button kind="action" onPress={() => print()}>
              {WORDS.cards.print}
            </Button>
            <Button onPress={savePlanFile}>{WORDS.files.savePlan}</Button>
            <Button onPress={saveCampFile}>{WORDS.files.save}</Button>
          </div>
          {printed === "berths" ? <p class="note soft">{WORDS.cards.duplex}</p> : null}
          {now === undefined ? null : (
            <>
              <TreesLookedAt looked={now.plan.treesLookedAt} />
              <NotChecked plan={now.plan} />
            </>
          )}
        </div>
        {now === undefined ? null : <Papers printed={printed} now={now} paper={paper.value} />}
        <div class="screen-only">
          <Cautions />
        </div>
      </div>
    </CampFrame>
  );
}

function Papers({ printed, now, paper }: SheetsProps & { readonly printed: string }) {
  if (printed === "papers") return <CampSheets now={now} />;
  return printed === "pocket" ? (
    <PocketCards now={now} paper={paper} />
  ) : (
    <BerthCards now={now} paper={paper} />
  );
}

/** A card for each berth, front and back. */
function BerthCards({ now: { plan, camp }, paper }: SheetsProps) {
  const scenes = useMemo(
    () =>
      plan.berths.map(({ id }) => ({
        id,
        front: cardScene(plan, camp, id, DRAWN),
        back: cardBackScene(plan, camp, id, DRAWN),
      })),
    [plan],
  );
  if (scenes.length === 0) return <p class="lead">{WORDS.cards.none}</p>;
  const cards = scenes.map(({ id, front, back }) => ({
    id,
    front: (
      <Card key={id} name={fill(WORDS.cards.front, { id })} scene={front}>
        <Button kind="plain" label={fill(WORDS.cards.saveCard, { id })} onPress={() => saveCard(id)}>
          {WORDS.cards.save}
        </Button>
      </Card>
    ),
    back: <Card key={id} name={fill(WORDS.cards.back, { id })} scene={back} />,
  }));
  return <CardSheets cards={cards} paper={paper} />;
}

/** For each sleeper a table of their own steps to carry, and a card to read a strap's angle by. */
function PocketCards({ now: { plan, camp }, paper }: SheetsProps) {
  const cards = useMemo(() => {
    const tables = pocketTables(plan, camp).map((table, index) => ({
      id: `table ${index}`,
      name: fill(WORDS.cards.table, { name: table.name }),
      scene: pocketTableScene(table, DRAWN),
    }));
    const angle = angleCardScene(camp.rules, DRAWN);
    return [{ id: "angle", name: WORDS.cards.angle, scene: angle }, ...tables];
  }, [plan]);
  const printed = cards.map(({ id, name, scene }) => ({
    id,
    front: <Card key={id} name={name} scene={scene} />,
  }));
  return <CardSheets cards={printed} paper={paper} />;
}

interface SheetsProps {
  readonly now: Answer;
  readonly paper: Paper;
}

const DRAWN = { labels, measure };

interface CardProps {
  readonly name: string;
  readonly scene: Scene;
  readonly children?: ComponentChildren;
}

/** One card as paper. A card that lies on its side is turned to stand among the others in print. */
function Card({ name, scene, children }: CardProps) {
  const lies = scene.size.width > scene.size.height;
  return (
    <figure class={lies ? "card one-ink card-wide" : "card one-ink"} aria-label={name}>
      <Drawing scene={scene} />
      {children === undefined ? null : <figcaption class="screen-only">{children}</figcaption>}
    </figure>
  );
}
