import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { name, word } from "../scene/names.ts";
import { circle, group, hitCircle, line, path, text } from "../scene/shapes.ts";
import type { Item, Scene } from "../scene/scene.ts";
import { plainLabels } from "../words/plain-labels.ts";
import { plainMeasure } from "../words/plain-measure.ts";
import { renderSvg } from "./render-svg.ts";

const words = { labels: plainLabels, measure: plainMeasure };

function sceneOf(...items: Item[]): Scene {
  return {
    name: "test",
    size: { width: 100, height: 50, unit: "px" },
    title: name("A & B"),
    desc: word("figure.mark-desc"),
    ground: "paper",
    items,
  };
}

function file(...items: Item[]): string {
  return renderSvg(sceneOf(...items), { ...words, standalone: true });
}

describe("renderSvg", () => {
  it("tells what the drawing is, escaped", () => {
    expect(file()).toContain("<title>A &amp; B</title>");
    expect(file()).toContain("<desc>Two posts and a line that hangs.</desc>");
    expect(file()).toContain('role="img"');
  });

  it("keeps a name from becoming markup", () => {
    const nasty = '<script>alert("x")</script>&\u0000\ud800';
    const svg = file(text(name(nasty), [0, 0], { size: 15 }));
    expect(svg).not.toContain("<script");
    expect(svg).toContain("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt;&amp;");
    expect(svg.includes("\u0000") || svg.includes("\ud800")).toBe(false);
  });

  it("escapes any text so that it reads back the same", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 30 }), (written) => {
        const svg = file(text(name(`x${written}`), [0, 0], { size: 15 }));
        const said = /<text[^>]*>([^<]*)<\/text>/.exec(svg)?.[1] ?? "";
        const back = said
          .replace(/&lt;/g, "<")
          .replace(/&gt;/g, ">")
          .replace(/&quot;/g, '"')
          .replace(/&#39;/g, "'")
          .replace(/&amp;/g, "&");
        expect(back).toBe(
          `x${written.replace(/[\p{Cc}\uFFFE\uFFFF]/gu, (letter) => (/[\t\n\r]/.test(letter) ? letter : " "))}`,
        );
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  it("writes numbers to three decimals, never −0", () => {
    const svg = file(circle([1 / 3, -0.0001], 2.00049, { fill: "ink" }));
    expect(svg).toContain('cx="0.333" cy="0" r="2"');
  });

  it("stops at a place that is none", () => {
    expect(() => file(circle([Number.NaN, 0], 1))).toThrow(/no place on paper/);
  });

  it("writes what a shape stands for, and its class", () => {
    expect(file(circle([1, 1], 1, { ref: "tree/K12", class: "ns-tree" }))).toContain(
      'class="ns-tree" data-ref="tree/K12"',
    );
  });

  it("gives every shape the colours of the theme, and a page the classes to change them", () => {
    const stroke = line(
      [
        [0, 0],
        [1, 1],
      ],
      { stroke: "cloth" },
    );
    expect(file(stroke)).toContain('stroke="#2B3F9E"');
    expect(file(stroke)).not.toContain("ns-stroke-cloth");
    const page = renderSvg(sceneOf(stroke), { ...words, standalone: false });
    expect(page).toContain("ns-stroke-cloth");
    expect(page).not.toContain("<?xml");
    const dark = renderSvg(sceneOf(stroke), { ...words, theme: "dark", standalone: true });
    expect(dark).toContain('stroke="#B0BEFF"');
  });

  it("moves, turns and scales a group", () => {
    const svg = file(
      group([path([["M", 0, 0], ["L", 1, 0], ["Z"]])], { move: [2, 3], turnRad: Math.PI / 2, scale: 2 }),
    );
    expect(svg).toContain('transform="translate(2 3) rotate(90) scale(2)"');
    expect(svg).toContain('d="M0 0L1 0Z"');
  });

  it("lets a finger find what the eye does not see", () => {
    expect(file(hitCircle([5, 5], 22, "berth/3"))).toMatch(
      /data-ref="berth\/3".*fill="none".*pointer-events="all"/,
    );
  });
});

describe("names", () => {
  it("run from right to left as a whole where their first strong letter does", () => {
    const svg = file(text(name("نور"), [10, 10], { size: 15, anchor: "start" }));
    expect(svg).toContain('direction="rtl"');
    expect(svg).toContain('text-anchor="end"');
    expect(svg).toContain(">نور</text>");
  });

  it("keep their direction within a sentence", () => {
    const svg = file(text(word("card.wake-leader", { name: name("نور") }), [10, 10], { size: 15 }));
    expect(svg).toContain("wake \u2068نور\u2069.");
    expect(svg).not.toContain("direction=");
  });

  it("are set whole in one face", () => {
    expect(file(text(name("Łucja"), [0, 0], { size: 15 }))).not.toMatch(/<text[^>]*font-family/);
    for (const other of ["Ольга", "नीरा", "李 静", "نور"]) {
      expect(file(text(name(other), [0, 0], { size: 15 }))).toMatch(
        /<text[^>]*font-family="&quot;Noto Sans Variable/,
      );
    }
  });

  it("take the other face where the Latin one lacks a letter", () => {
    expect(file(text(name("Nguyễn Thị Hoa"), [0, 0], { size: 15 }))).toMatch(
      /font-family="&quot;Noto Sans Variable/,
    );
    const sentence = word("card.wake-leader", { name: name("Nguyễn Thị Hoa") });
    expect(file(text(sentence, [0, 0], { size: 15 }))).not.toMatch(/<text[^>]*font-family/);
  });

  it("are cut at a grapheme, never within one, and never set smaller", () => {
    const svg = file(text(name("नीरानीरानीरा"), [0, 0], { size: 15, maxWidth: 40 }));
    expect(svg).toMatch(/font-size="15"/);
    const said = /<text[^>]*>([^<]*)<\/text>/.exec(svg)?.[1] ?? "";
    expect(said.endsWith("…")).toBe(true);
    expect(plainMeasure(said, 15, 500)).toBeLessThanOrEqual(40);
    expect("नीरानीरानीरा".startsWith(said.slice(0, -1))).toBe(true);
    expect(said.slice(0, -1)).toMatch(/^(नी|रा)*$/u);
  });
});
