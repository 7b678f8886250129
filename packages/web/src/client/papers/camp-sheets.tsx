import {
  campTables,
  emergencyCardScene,
  knotCardScene,
  leadersSheetScenes,
  renderSvg,
  tableSheets,
  type Scene,
  type SheetTable,
} from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import type { Answer } from "../state/plan-store.ts";
import { fileName, saveFile } from "../state/save-files.ts";
import { Button } from "../ui/button.tsx";
import { Drawing } from "../ui/drawing.tsx";
import { fill, WORDS } from "../words.ts";

/** A paper of the camp: its name in words, and every sheet of it. */
interface Paper {
  readonly name: string;
  readonly title: string;
  readonly sheets: readonly Scene[];
}

/** Every paper of the camp; one is chosen, shown as it will be printed, and printed or saved alone. */
export function CampSheets({ now }: { readonly now: Answer }) {
  const papers = useMemo(() => papersOf(now), [now]);
  const chosen = useSignal("leaders-sheet");
  const paper = papers.find(({ name }) => name === chosen.value) ?? papers[0];
  if (paper === undefined) return null;
  return (
    <>
      <div class="screen-only paper-choice" role="group" aria-label={WORDS.cards.which}>
        {papers.map(({ name, title }) => (
          <Button key={name} pressed={name === paper.name} onPress={() => (chosen.value = name)}>
            {title}
          </Button>
        ))}
      </div>
      <div class="screen-only choice-row">
        <Button onPress={() => save(paper, now)}>{WORDS.cards.saveSheets}</Button>
      </div>
      <div class="camp-sheets">
        {paper.sheets.map((scene, place) => (
          <figure
            key={place}
            class={`camp-sheet one-ink ${shapeOf(scene)}`}
            aria-label={fill(WORDS.cards.sheetOf, { title: paper.title, n: place + 1 })}
          >
            <Drawing scene={scene} />
          </figure>
        ))}
      </div>
    </>
  );
}

const WORDS_OF_DRAWINGS = { labels, measure };

function papersOf({ plan, camp }: Answer): readonly Paper[] {
  const words = WORDS_OF_DRAWINGS;
  const tables = campTables(plan, camp).map((table): Paper => ({
    name: table.name,
    title: titleOf(table),
    sheets: tableSheets(table, words),
  }));
  return [
    { name: "leaders-sheet", title: WORDS.cards.leaders, sheets: leadersSheetScenes(plan, camp, words) },
    ...tables,
    { name: "emergency", title: WORDS.cards.emergency, sheets: [emergencyCardScene(plan, camp, words)] },
    { name: "knots", title: WORDS.cards.knots, sheets: [knotCardScene(words)] },
  ];
}

function titleOf(table: SheetTable): string {
  return labels(table.title);
}

/** Which page it is printed on. */
function shapeOf({ size }: Scene): string {
  if (size.width > size.height) return "sheet-wide";
  return size.width < A5_MM ? "sheet-card" : "sheet-tall";
}

/** Narrower than that it is a card. */
const A5_MM = 148;

function save(paper: Paper, { plan }: Answer): void {
  for (const [place, scene] of paper.sheets.entries()) {
    const svg = renderSvg(scene, { ...WORDS_OF_DRAWINGS, theme: "one-ink", standalone: true });
    const number = paper.sheets.length === 1 ? "" : ` ${place + 1}`;
    saveFile(`${fileName(`${plan.campName} ${paper.name}${number}`)}.svg`, svg, "image/svg+xml");
  }
}
