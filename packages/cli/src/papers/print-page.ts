import { embeddedFaces } from "./embedded-faces.ts";

/** Sheets as one page to print, one to a leaf, with the type inside. */
export function printPage(title: string, size: "A4" | "A4 landscape", sheets: readonly string[]): string {
  return [
    '<!doctype html>\n<html lang="en-GB">\n<head>\n<meta charset="utf-8">\n',
    `<title>${escaped(title)}</title>\n<style>\n@page { size: ${size}; margin: 0 }\n${STYLE}${embeddedFaces(sheets.join(""))}</style>\n</head>\n<body>\n`,
    ...sheets.map((svg) => `<section>\n${svg.replace(/^<\?xml[^>]*\?>\s*/, "")}</section>\n`),
    "</body>\n</html>\n",
  ].join("");
}

/** A hair is cut off each leaf, so that rounding makes no empty leaf between two. */
const STYLE = `body { margin: 0; background: #fff }
section { break-after: page; overflow: hidden }
section:last-child { break-after: auto }
svg { display: block; margin-bottom: -0.3mm }
@media screen { section { margin: 8mm auto; width: max-content; box-shadow: 0 0 0 0.3mm #888 } }
`;

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
