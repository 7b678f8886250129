import { existsSync, readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { pathToFileURL } from "node:url";
import { filesBelow, readSource, ROOT } from "./source-files.mjs";

/** @import { SourceFile } from "./source-files.mjs" */

/**
 * One sentence for each relative link of a page that leads nowhere.
 *
 * @param {SourceFile} page
 * @param {(path: string) => string | undefined} read  the text of a file from the root, undefined where absent
 * @returns {string[]}
 */
export function linkFaults(page, read) {
  return linksOf(page.text).flatMap((link) => {
    if (/^[a-z][a-z+.-]*:/i.test(link)) return [];
    const [path = "", anchor] = link.split("#", 2);
    const target = path === "" ? page.path : normalize(join(dirname(page.path), decodeURI(path)));
    const text = path === "" ? page.text : read(target.split("\\").join("/"));
    if (text === undefined) return [`${page.path}: ${link} leads nowhere`];
    if (anchor === undefined || !target.endsWith(".md") || anchorsOf(text).has(anchor)) return [];
    return [`${page.path}: ${link}: no such heading`];
  });
}

/** @param {string} text */
function linksOf(text) {
  const prose = withoutCode(text);
  const inline = [...prose.matchAll(/!?\[(?:[^\]\\]|\\.)*\]\(<?([^)\s>]+)>?(?:\s+"[^"]*")?\)/g)];
  const defined = [...prose.matchAll(/^\[[^\]]+\]:\s*<?(\S+?)>?\s*$/gm)];
  const images = [...prose.matchAll(/\b(?:src|href)="([^"]+)"/g)];
  return [...inline, ...defined, ...images].map((match) => match[1] ?? "");
}

/** @param {string} text */
function withoutCode(text) {
  return text.replace(/^(`{3,}|~{3,})[^]*?^\1\s*$/gm, "").replace(/`[^`\n]*`/g, "");
}

/**
 * The names of a page's headings, as links write them.
 *
 * @param {string} text
 */
function anchorsOf(text) {
  /** @type {Set<string>} */
  const anchors = new Set();
  const headings = text.replace(/^(`{3,}|~{3,})[^]*?^\1\s*$/gm, "").matchAll(/^#{1,6}\s+(.*?)\s*#*$/gm);
  for (const [, heading = ""] of headings) {
    const plain = heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\s_-]/gu, "")
      .replace(/\s/g, "-");
    let name = plain;
    for (let again = 1; anchors.has(name); again += 1) name = `${plain}-${again}`;
    anchors.add(name);
  }
  return anchors;
}

/** @param {string} path */
function fromDisk(path) {
  const full = join(ROOT, path);
  if (!existsSync(full)) return undefined;
  return path.endsWith(".md") ? readFileSync(full, "utf8") : "";
}

function main() {
  const pages = filesBelow().filter((path) => path.endsWith(".md"));
  const faults = pages.flatMap((path) => linkFaults(readSource(path), fromDisk));
  faults.forEach((fault) => console.error(fault));
  console.log(`${pages.length} pages: ${faults.length} links lead nowhere`);
  if (faults.length > 0) process.exitCode = 1;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) main();
