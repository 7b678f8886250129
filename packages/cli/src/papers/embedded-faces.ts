import { readFileSync } from "node:fs";
import { fontSlices, isFor, type FontSlice } from "../pdf/font-files.ts";

const PACKAGE = "@fontsource-variable/atkinson-hyperlegible-next";
const FAMILY = "Atkinson Hyperlegible Next Variable";

/** The type of drawings as a stylesheet that carries the letters itself: the slices that this text has letters of. */
export function embeddedFaces(text: string): string {
  const letters = [...new Set(text)].map((letter) => letter.codePointAt(0) ?? 0);
  return slices()
    .filter((slice) => letters.some((code) => isFor(slice, code)))
    .map(rule)
    .join("");
}

let opened: readonly FontSlice[] | undefined;

function slices(): readonly FontSlice[] {
  opened ??= fontSlices(PACKAGE);
  return opened;
}

const rules = new Map<string, string>();

function rule({ path, unicodeRange }: FontSlice): string {
  const known = rules.get(path);
  if (known !== undefined) return known;
  const data = readFileSync(path).toString("base64");
  const made =
    `@font-face{font-family:"${FAMILY}";font-weight:200 800;font-style:normal;` +
    `src:url(data:font/woff2;base64,${data}) format("woff2");unicode-range:${unicodeRange}}`;
  rules.set(path, made);
  return made;
}
