import { describe, expect, it } from "vitest";
import { harrowmere } from "../fixture/harrowmere.fixture.ts";
import { planByHand } from "../fixture/plan-by-hand.fixture.ts";
import { overlappingTexts } from "../fixture/text-boxes.fixture.ts";
import { withGround } from "../fixture/variants.fixture.ts";
import { EIGHT } from "../fixture/wanted.fixture.ts";
import { renderSvg } from "../svg/render-svg.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { cardScene } from "./card-scene.ts";

const words = { labels: plainLabels, measure: plainMeasure };
const camp = harrowmere();
const plan = planByHand(camp, EIGHT);

/** The front of berth 1 as text, with tags of its trees. */
function card(head: string, foot: string): string {
  const [berth] = plan.berths;
  const trees = (camp.ground?.trees ?? []).map((tree) => {
    if (tree.id === berth?.headTree) return { ...tree, tag: head };
    return tree.id === berth?.footTree ? { ...tree, tag: foot } : tree;
  });
  const scene = cardScene(plan, withGround(camp, { trees }), "1", words);
  expect(overlappingTexts(scene, words)).toEqual([]);
  return renderSvg(scene, { ...words, standalone: true });
}

describe("tags on a card", () => {
  it("are never cut where they fit on half the card", () => {
    const svg = card("blue tape E7, by path", "red 2");
    expect(svg).toContain(">blue tape E7, by path<");
    expect(svg).not.toContain("…");
  });

  it("are cut after the word that says which end it is, where nothing else will do", () => {
    const svg = card("the tree with the blue tape by the path", "red 2");
    expect(svg).toContain(">HEAD<");
    expect(svg).toMatch(/>the tree with [^<]*…</);
  });
});
