import type { Camp, Plan } from "@nightspan/core";
import { CAUTIONS, readCamp } from "@nightspan/edge";
import { ENGLISH } from "@nightspan/drawing";
import { beforeAll, describe, expect, it } from "vitest";
import { readPdf, type ReadPdf } from "../pdf/read-pdf.fixture.ts";
import { planWithSolver } from "../plan-with-solver.ts";
import { exampleText } from "../testing.fixture.ts";
import { pdfPapers, type Papers } from "./pdf-papers.ts";

let camp: Camp;
let plan: Plan;
let made: Papers;

function bytesOf({ papers }: Papers, name: string): Uint8Array {
  const content = papers.find((paper) => paper.name === name)?.content;
  if (content === undefined || typeof content === "string") throw new Error(`no ${name}`);
  return content;
}

function read(name: string): ReadPdf {
  return readPdf(bytesOf(made, name));
}

function said({ pages }: ReadPdf): string {
  return pages
    .flat()
    .map((text) => text.said)
    .join(" ");
}

beforeAll(async () => {
  const opened = readCamp(exampleText("demo"));
  if (!opened.ok) throw new Error("the demo camp does not open");
  camp = opened.value.camp;
  const planned = await planWithSolver(camp);
  if (!planned.ok) throw new Error("the demo camp is not planned");
  plan = planned.value;
  made = await pdfPapers(plan, camp);
}, 60_000);

const UPRIGHT = ["cards.pdf", "pocket-tables.pdf"];
const SINGLE = ["a6/angle-card.pdf", "a6/pocket-tables.pdf"];
const SHEETS = [
  "cord-cut-list",
  "emergency-card",
  "kit-list",
  "knot-card",
  "risk-assessment",
  "sleeping-plan",
  "strap-inspection",
  "timeline",
  "tree-inspection",
].map((name) => `sheets/${name}.pdf`);
const NAMES = [...SINGLE, ...SHEETS, "angle-card.pdf", ...UPRIGHT, "leaders-sheet.pdf", "map.pdf"].sort();
const WIDE = /risk|sleeping|strap|tree|leaders|map|^angle/;

/** Points of the paper: A6, A4 upright, A4 on its side. */
function sizeOf(name: string): readonly number[] {
  if (name.startsWith("a6/")) return name.includes("angle") ? [420, 298] : [298, 420];
  return WIDE.test(name.replace("sheets/", "")) ? [842, 595] : [595, 842];
}

describe("papers as PDF", () => {
  it("are cards and tables four to a sheet, the leader's sheet, the map and angle cards", () => {
    expect(
      made.papers
        .map(({ name }) => name)
        .filter((name) => name.endsWith(".pdf"))
        .sort(),
    ).toEqual(NAMES);
    expect(made.papers.filter(({ name }) => name.endsWith(".csv"))).toHaveLength(SHEETS.length - 4);
    expect(read("cards.pdf").pages).toHaveLength(2 * Math.ceil(plan.berths.length / 4));
    expect(read("pocket-tables.pdf").pages).toHaveLength(Math.ceil(plan.berths.length / 4));
    expect(read("angle-card.pdf").pages).toHaveLength(1);
    expect(read("leaders-sheet.pdf").pages).toHaveLength(1);
    expect(read("map.pdf").pages).toHaveLength(1);
  });

  it("have the same bytes for the same plan, and the day of the camp as their own", async () => {
    const again = await pdfPapers(plan, camp);
    for (const name of NAMES) {
      expect(Buffer.compare(bytesOf(again, name), bytesOf(made, name)), name).toBe(0);
      expect(read(name).source).toContain("(D:20270514120000Z)");
    }
  });

  it.each(NAMES)("%s is tagged, in English, with its letters inside", (name) => {
    const { source, contents } = read(name);
    expect(source).toContain("/Lang (en-GB)");
    expect(source).toMatch(/\/Marked true/);
    expect(source).toContain("/S /Document");
    const fonts = [...source.matchAll(/\/BaseFont \/(\S+)/g)].map(([, font]) => font);
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/^[A-Z]{6}\+DejaVuSans(-Bold)?$/);
    expect(source.match(/\/FontFile2 /g)).toHaveLength(new Set(fonts).size);
    for (const content of contents) {
      const opened = content.match(/ (?:BDC|BMC)$|^BDC$|>> BDC$/gm) ?? [];
      expect(opened.length).toBe((content.match(/^EMC$/gm) ?? []).length);
    }
  });

  it.each(NAMES)("%s keeps its words on the paper, at nine points of the screen's type or more", (name) => {
    const { source, pages } = read(name);
    const boxes = [...source.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, wide, high]) => [
      Number(wide),
      Number(high),
    ]);
    expect(boxes).toHaveLength(pages.length);
    expect(boxes[0]?.map(Math.round)).toEqual(sizeOf(name));
    pages.forEach((page, index) => {
      const [width = 0, height = 0] = boxes[index] ?? [];
      for (const { said: words, x, y, size } of page) {
        expect([words, x > 0 && x < width && y > 0 && y < height]).toEqual([words, true]);
        if (!/^\d+$/.test(words.trim())) expect([words, size >= 0.94 * 9 - 0.05]).toEqual([words, true]);
      }
    });
  });

  it.each(NAMES)("%s carries no weight and no pull, and never says that a berth is safe", (name) => {
    expect(said(read(name))).not.toMatch(/\d\s?(?:kg|N)\b|\bsafe\b|\bpasses\b|\bholds\b|\bOK\b/i);
  });

  it("draw the angles of the angle card true on the paper", () => {
    const [content = ""] = read("angle-card.pdf").contents;
    const lines = [...content.matchAll(/^0 0 m\n([\d.]+) ([\d.]+) l$/gm)];
    const degrees = lines.map(([, x, y]) => (Math.atan2(Number(y), Number(x)) * 180) / Math.PI);
    expect(degrees.map((angle) => Math.round(angle * 100) / 100)).toEqual(
      Array.from({ length: 4 }, () => [20, 25, 30, 35]).flat(),
    );
    // One scale across and up, so that they stay true.
    for (const [, across, up] of content.matchAll(/^([\d.-]+) 0 0 ([\d.-]+) \S+ \S+ cm$/gm)) {
      expect(Math.abs(Number(across))).toBe(Math.abs(Number(up)));
    }
  });

  it("print a ruler ten centimetres long on the angle card", () => {
    const [content = ""] = read("a6/angle-card.pdf").contents;
    const [, scale = "0"] = /^([\d.]+) 0 0 \1 \S+ \S+ cm$/m.exec(content) ?? [];
    const [, from, to] = /^([\d.]+) 95 m\n([\d.]+) 95 l$/m.exec(content) ?? [];
    expect(((Number(to) - Number(from)) * Number(scale) * 25.4) / 72).toBeCloseTo(100, 3);
  });

  it("print the backs so that they fall on their fronts, turned over the long edge", () => {
    const [fronts = [], backs = []] = read("cards.pdf").pages;
    const berth = plan.berths[0];
    const tag = camp.ground?.trees.find(({ id }) => id === berth?.headTree)?.tag ?? "no tag";
    const front = fronts.find((text) => text.said === tag);
    const back = backs.find((text) => text.said === `HEAD ${tag}`);
    expect(front?.x).toBeLessThan(595.3 / 2);
    expect(back?.x).toBeGreaterThan(595.3 / 2);
    expect(Math.abs((front?.y ?? 0) - (back?.y ?? 0))).toBeLessThan(841.9 / 2);
  });

  it("carry every caution on each back and on the map", () => {
    expect(CAUTIONS.length).toBeGreaterThan(10);
    const short = Object.entries(ENGLISH).filter(([key]) => key.startsWith("caution."));
    const whole = (text: string): string => text.replaceAll(" ", "");
    const [, backs = []] = read("cards.pdf").pages;
    const first = backs.filter(({ x }) => x > 595.3 / 2).map((text) => text.said);
    for (const [, caution] of short) {
      expect(whole(first.join(""))).toContain(whole(caution));
      expect(whole(said(read("map.pdf")))).toContain(whole(caution));
      expect(whole(said(read("pocket-tables.pdf")))).toContain(whole(caution));
    }
  });

  it("give each card the reason of its own berth", () => {
    const unseen = plan.berths.filter(({ verdict }) => verdict === "look-again");
    expect(unseen.length).toBeGreaterThan(0);
    const cards = said(read("cards.pdf"));
    expect(cards.match(/Look again: /g)).toHaveLength(unseen.length);
  });
});

describe("names on PDF", () => {
  it("are drawn in every script that a face has, and else as the id, which is told", () => {
    const all = said(read("leaders-sheet.pdf"));
    for (const name of ["Ibrahim Şahin", "Дмитро Коваль", "Nguyễn Thị Hoa", "Ελένη Παππά"])
      expect(all).toContain(name);
    expect(all).not.toMatch(/\uFFFD|[\u2066-\u2069]/);
    expect(made.remarks).toEqual([]);
    const outlined = read("leaders-sheet.pdf").contents.join("");
    expect(outlined.match(/\/ActualText/g)?.length).toBeGreaterThanOrEqual(2);
  });

  it("are cut nowhere on the sheet of a usual camp", () => {
    expect(said(read("leaders-sheet.pdf"))).not.toContain("…");
    expect(said(read("cards.pdf"))).not.toContain("…");
    expect(said(read("pocket-tables.pdf"))).not.toContain("…");
  });
});
