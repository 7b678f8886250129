import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { findBrowser } from "../../../tools/browser.mjs";

/**
 * Draws the advance widths of the Latin face, figures tabular and without kerning, into `src/words/width-runs.ts`.
 * Run by hand when the face changes: node packages/drawing/scripts/type-widths.mjs
 */
const RANGES = [
  [32, 126],
  [160, 383],
];
const SINGLE = "–—‘’“”…€™−";
const require = createRequire(import.meta.url);
const FACE = "@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next";

/** @param {string} subset */
function face(subset) {
  const bytes = readFileSync(require.resolve(`${FACE}-${subset}-wght-normal.woff2`)).toString("base64");
  return `url(data:font/woff2;base64,${bytes})`;
}

function page() {
  const latin = "U+0000-00FF,U+0131,U+0152-0153,U+2000-206F,U+20AC,U+2122,U+2212";
  return `<style>
    @font-face { font-family: A; font-weight: 200 800; src: ${face("latin")}; unicode-range: ${latin} }
    @font-face { font-family: A; font-weight: 200 800; src: ${face("latin-ext")}; unicode-range: U+0100-02BA }
    span { font: 1000px A, monospace; font-variant-numeric: tabular-nums; white-space: pre; font-kerning: none }
  </style><span>aŁ</span>`;
}

/** @param {number} first @param {readonly number[][]} widths */
function run(first, widths) {
  const [regular, bold] = [0, 1].map((index) => widths.map((pair) => pair[index]).join(", "));
  return `  { first: ${first}, regular: [${regular}], bold: [${bold}] },\n`;
}

async function main() {
  const { chromium } = require("playwright-core");
  const browser = await findBrowser();
  const opened = await chromium.launch({
    executablePath: browser.executablePath,
    env: browser.env,
    args: browser.args,
  });
  const tab = await opened.newPage();
  await tab.setContent(page());
  await tab.evaluate("Promise.all(['400', '700'].map((w) => document.fonts.load(w + ' 20px A', 'aŁ')))");
  /** @param {number} code @returns {Promise<number[]>} */
  const widthOf = (code) =>
    tab.evaluate(
      `["400", "700"].map((w) => {
        const span = document.querySelector("span");
        span.textContent = String.fromCodePoint(${code});
        span.style.fontWeight = w;
        return Math.round(span.getBoundingClientRect().width);
      })`,
    );
  let table = "";
  for (const [first = 0, last = 0] of RANGES) {
    const widths = [];
    for (let code = first; code <= last; code++) widths.push(await widthOf(code));
    table += run(first, widths);
  }
  const codes = Array.from(SINGLE, (sign) => sign.codePointAt(0) ?? 0).sort((a, b) => a - b);
  for (const code of codes) table += run(code, [await widthOf(code)]);
  await opened.close();
  const target = new URL("../src/words/width-runs.ts", import.meta.url);
  const before = readFileSync(target, "utf8");
  const head = before.slice(0, before.indexOf("= [\n") + 4);
  writeFileSync(target, `${head}${table}];\n`);
}

await main();
