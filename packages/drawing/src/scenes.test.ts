import { CAUTION_KEYS, DEFER_KEYS } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { scenes } from "../golden/scenes.ts";
import { overlappingTexts, placedTexts, textsOffPaper } from "./fixture/text-boxes.fixture.ts";
import { ENGLISH, plainLabels, plainMeasure, renderSvg, type Scene } from "./index.ts";

const words = { labels: plainLabels, measure: plainMeasure };
const drawn = scenes.map(({ name, draw }) => ({ name, scene: draw() }));
const starting = (start: string): { name: string; scene: Scene }[] =>
  drawn.filter(({ name }) => name.startsWith(start));

/** All words of a drawing in one line. */
function said(scene: Scene): string {
  return placedTexts(scene, words)
    .map((text) => text.said)
    .join(" ");
}

describe("every drawing", () => {
  it.each(drawn)("$name says and holds nothing that is not there", ({ scene }) => {
    const svg = renderSvg(scene, { ...words, standalone: true });
    expect(svg).not.toMatch(/NaN|undefined|Infinity|\{\w+\}/);
    expect(svg).not.toMatch(/ style=|<style/);
  });

  it.each(drawn)("$name keeps its words on the paper", ({ scene }) => {
    const off = textsOffPaper(scene, words).filter(({ class: kind }) => kind !== "ns-plate-number");
    expect(off.map(({ said }) => said)).toEqual([]);
  });

  it.each(drawn)("$name sets no words on other words", ({ scene }) => {
    expect(overlappingTexts(scene, words)).toEqual([]);
  });

  it.each(drawn)("$name sets nothing smaller than the least size", ({ name, scene }) => {
    const least = scene.size.unit === "mm" ? (9 * 25.4) / 72 : 15;
    const plates = /ns-plate-number/;
    const small = placedTexts(scene, words).filter(
      (text) => text.size < least - 1e-6 && !plates.test(text.class) && !name.startsWith("door-"),
    );
    expect(small.map((text) => `${text.said} ${text.size}`)).toEqual([]);
  });
});

describe("cards and sheets", () => {
  const papers = ["card", "leaders", "pocket", "angle", "sheet", "emergency", "knot"].flatMap(starting);

  it("are drawn at all", () => expect(papers.length).toBeGreaterThan(8));

  it.each(papers)("$name carries no force and no mass", ({ scene }) => {
    expect(said(scene)).not.toMatch(/\bN\b|\bkg\b|newton|hanging|years/);
    expect(renderSvg(scene, { ...words, standalone: true })).not.toMatch(/ns-pull/);
  });

  it.each(papers)("$name is one ink and no grey: a photocopy loses nothing", ({ scene }) => {
    const svg = renderSvg(scene, { ...words, standalone: true });
    const colours = new Set([...svg.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(([, colour]) => colour));
    expect([...colours].filter((colour) => !["#000000", "#FFFFFF", "none"].includes(colour ?? ""))).toEqual(
      [],
    );
    expect(svg).not.toMatch(/opacity/);
    const widths = [...svg.matchAll(/stroke-width="([\d.]+)"/g)].map(([, width]) => Number(width));
    expect(Math.min(...widths)).toBeGreaterThanOrEqual(0.15);
  });

  it.each([...starting("card-front"), ...starting("cards-fronts")])(
    "$name has at most ten lines",
    ({ scene }) => {
      const numbers = placedTexts(scene, words).filter(({ said }) => /^(1[0-9]|[1-9])$/.test(said));
      expect(Math.max(...numbers.map(({ said }) => Number(said)))).toBeLessThanOrEqual(10);
    },
  );

  it.each(starting("card-front"))("$name sets nothing larger than the strap marks", ({ name, scene }) => {
    const texts = placedTexts(scene, words);
    const largest = Math.max(...texts.map(({ size }) => size));
    const marks = texts.filter(({ size }) => size === largest);
    const berthNumber = marks.every(({ fill }) => fill === "on-action");
    expect(
      name.endsWith("do-not-hang") ? berthNumber : marks.every(({ said }) => /\d\s(m|cm)/.test(said)),
    ).toBe(true);
  });

  it("tell tarp, pegs in steps, what is not covered, and under and over apart", () => {
    const [card] = starting("card-front-tarp");
    const all = card === undefined ? "" : said(card.scene).replaceAll("\u00a0", " ");
    expect(all).toMatch(/Tarp ridge \d\.\d\d m/);
    expect(all).toMatch(/Pegs \d½? steps out/);
    expect(all).toContain("Not covered: foot end; lower 20 cm");
    expect(all).toContain("Under, foam: borderline. Over, bag-warm: enough.");
  });

  it("leave room to write, and name what the plan knows, on the risk assessment", () => {
    const [sheet] = starting("sheet-risk");
    const all = sheet === undefined ? "" : said(sheet.scene).replaceAll("\u00a0", " ");
    expect(all).toContain("Trees looked at: 15 of 16");
    expect(all).toContain("gusts of 14 m/s");
    expect(all).toContain("what has changed on the day");
  });

  it("have a box to tick for packed and for returned in every row of the kit list", () => {
    const [sheet] = starting("sheet-kit-list");
    const boxes = sheet?.scene.items.filter((item) => item.class === "ns-tick").length ?? 0;
    const lines =
      sheet === undefined
        ? 0
        : said(sheet.scene).match(/hammock-usual|webbing|tarp-wide|foam|bag-warm|\bpeg peg|drip line/g)
            ?.length;
    expect(boxes).toBe(2 * (lines ?? NaN));
  });

  it("name who looks in on somebody under 16, and give no degrees", () => {
    const [card] = starting("card-front-youth");
    const all = card === undefined ? "" : said(card.scene);
    expect(all).toContain("Ngozi looks in at 02:00");
    expect(all).not.toContain("°");
  });

  it.each([...starting("card-back"), ...starting("pocket-table")])(
    "$name carries every caution and everybody whose word goes first",
    ({ scene }) => {
      const all = said(scene);
      for (const key of CAUTION_KEYS) expect(all).toContain(ENGLISH[`caution.${key}`]);
      for (const key of DEFER_KEYS) expect(all).toContain(ENGLISH[`defer.${key}`]);
    },
  );

  it("tells nobody how to hang where nobody may", () => {
    const [card] = starting("card-front-do-not-hang");
    const all = card === undefined ? "" : said(card.scene);
    expect(all).toContain("Do not hang");
    expect(all).not.toContain("strap mark");
  });

  it.each(starting("card-front"))("$name says what was not checked and who looked", ({ name, scene }) => {
    const allChecked = name.endsWith("-tarp") || name.endsWith("-youth");
    expect(said(scene).includes("Not checked: ")).toBe(!allChecked);
    expect(said(scene)).toMatch(/Trees looked at: \d of 2/);
  });
});

describe("maps", () => {
  it("carry every caution where they are a sheet of their own", () => {
    const [sheet] = starting("map-sheet");
    const all = sheet === undefined ? "" : said(sheet.scene);
    for (const key of CAUTION_KEYS) expect(all).toContain(ENGLISH[`caution.${key}`]);
    expect(all).toContain("look again");
    expect(all).toContain("Trees looked at: 15 of 16");
  });

  it("say so where they are only a sketch, and then show no scale", () => {
    const [sketch] = starting("map-paced-pairs");
    const all = sketch === undefined ? "" : said(sketch.scene);
    expect(all).toContain("sketch, not to scale");
    expect(all).not.toMatch(/steps of/);
  });

  it("name every berth's number, whatever the scale", () => {
    for (const { name, scene } of starting("map-desktop")) {
      const numbers = placedTexts(scene, words).filter(({ class: kind }) => kind === "ns-plate-number");
      expect([name, numbers.map(({ said }) => said).sort()]).toEqual([
        name,
        ["1", "2", "3", "4", "5", "6", "7", "8"],
      ]);
    }
  });

  it("ask to step a pair out where positions are from a phone", () => {
    const [gps] = starting("map-gps");
    expect(gps === undefined ? "" : said(gps.scene)).toContain("step it out");
  });
});

describe("verdicts", () => {
  it("never stand as a plate without their word", () => {
    for (const { name, scene } of drawn) {
      const svg = renderSvg(scene, { ...words, standalone: true });
      const plates = [...svg.matchAll(/class="ns-verdict ns-([\w-]+)"/g)].map(([, verdict]) => verdict);
      for (const verdict of new Set(plates)) {
        const word = { clear: "no rule broken", "look-again": "look again", "do-not-hang": "do not hang" }[
          verdict ?? ""
        ];
        expect([name, svg.toLowerCase().includes(word ?? "no such verdict")]).toEqual([name, true]);
      }
    }
  });

  it("are never told in words that promise", () => {
    for (const { scene } of drawn)
      expect(said(scene)).not.toMatch(/\bsafe\b|\bpasses\b|\bholds\b|\bOK\b|guarantee/i);
  });
});
