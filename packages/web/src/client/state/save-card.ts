import { cardBackScene, cardScene, renderSvg, type Scene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { answer } from "./plan-store.ts";
import { fileName, saveFile } from "./save-files.ts";

const WORDS_OF_DRAWINGS = { labels, measure };

/** One berth's card as two drawings, front and back. */
export function saveCard(id: string): void {
  const now = answer.peek();
  if (now === undefined) return;
  const { plan, camp } = now;
  save(cardScene(plan, camp, id, WORDS_OF_DRAWINGS), `${plan.campName} berth ${id}`);
  save(cardBackScene(plan, camp, id, WORDS_OF_DRAWINGS), `${plan.campName} berth ${id} back`);
}

function save(scene: Scene, name: string): void {
  const svg = renderSvg(scene, { ...WORDS_OF_DRAWINGS, theme: "one-ink", standalone: true });
  saveFile(`${fileName(name)}.svg`, svg, "image/svg+xml");
}
