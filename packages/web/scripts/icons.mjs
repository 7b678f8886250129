/** Draws the app's icons from its mark: `node packages/web/scripts/icons.mjs`. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { findBrowser } from "../../../tools/browser.mjs";

const PUBLIC = join(import.meta.dirname, "..", "public");
const ICONS = [
  { name: "icon-180.png", size: 180, share: 1, corners: false },
  { name: "icon-192.png", size: 192, share: 1, corners: true },
  { name: "icon-512.png", size: 512, share: 1, corners: true },
  // Whatever shape a device cuts out, the middle four fifths stay.
  { name: "icon-maskable-512.png", size: 512, share: 0.72, corners: false },
];

async function main() {
  const { executablePath, env, args } = await findBrowser();
  const browser = await chromium.launch({ executablePath, env, args });
  const mark = readFileSync(join(PUBLIC, "icon.svg"), "utf8");
  for (const { name, size, share, corners } of ICONS) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const drawn = corners ? mark : mark.replace(' rx="12"', "");
    const side = Math.round(size * share);
    const ground = corners ? "transparent" : "#F6F8F4";
    await page.setContent(
      `<body style="margin:0;background:${ground};display:grid;place-items:center;height:${size}px">` +
        drawn.replace('width="64" height="64"', `width="${side}" height="${side}"`),
    );
    writeFileSync(join(PUBLIC, name), await page.screenshot({ omitBackground: true }));
    await page.close();
  }
  await browser.close();
}

await main();
