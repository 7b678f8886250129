import ts from "typescript";
import { isTest } from "./source-files.mjs";

/** @import { SourceFile } from "./source-files.mjs" */

const FILE_LIMIT = 400;
const FUNCTION_LIMIT = 60;
const REASON = /^\s*(?:\/\/|\/?\*+) ?Long because: \S/m;
const NEAR_TOP = 30;

/**
 * Sizes of files and functions beside the house style; too long is a file over the limit without its reason.
 *
 * @param {readonly SourceFile[]} files
 * @returns {{ lines: string[], tooLong: string[] }}
 */
export function sizeReport(files) {
  const sources = files.filter(({ path }) => !isTest(path));
  const fileLines = sources.map(({ text }) => lineCount(text));
  const functions = sources.flatMap(functionSizes);
  const long = functions.filter(({ lines }) => lines > FUNCTION_LIMIT);
  return {
    lines: [
      row("files", fileLines, "120 and 250"),
      row(
        "functions",
        functions.map(({ lines }) => lines),
        "12 and 30",
      ),
      ...long.map(({ where, lines }) => `  over ${FUNCTION_LIMIT}: ${where}, ${lines} lines`),
    ],
    tooLong: sources.filter(lacksReason).map(({ path, text }) => {
      const count = lineCount(text);
      return `${path}: ${count} lines, over ${FILE_LIMIT}: split it, or say "// Long because: …" near its top`;
    }),
  };
}

/** @param {SourceFile} file */
function lacksReason({ text }) {
  const top = text.split("\n").slice(0, NEAR_TOP).join("\n");
  return lineCount(text) > FILE_LIMIT && !REASON.test(top);
}

/** @param {string} text */
function lineCount(text) {
  return text.split("\n").length - (text.endsWith("\n") ? 1 : 0);
}

/**
 * @param {string} what
 * @param {readonly number[]} sizes
 * @param {string} house
 */
function row(what, sizes, house) {
  const sorted = [...sizes].sort((a, b) => a - b);
  /** @param {number} share */
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
  const most = sorted.at(-1) ?? 0;
  return `${sorted.length} ${what}: median ${at(0.5)} lines, 9 of 10 within ${at(0.9)} (house: ${house}), longest ${most}`;
}

/**
 * @param {SourceFile} file
 * @returns {{ where: string, lines: number }[]}
 */
function functionSizes({ path, text }) {
  const kind = path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, false, kind);
  /** @type {{ where: string, lines: number }[]} */
  const found = [];
  /** @param {ts.Node} node */
  function visit(node) {
    if (ts.isFunctionLike(node) && "body" in node && node.body !== undefined) {
      const first = tree.getLineAndCharacterOfPosition(node.getStart(tree)).line;
      const last = tree.getLineAndCharacterOfPosition(node.getEnd()).line;
      if (ts.isBlock(/** @type {ts.Node} */ (node.body)) || last > first) {
        found.push({ where: `${path}:${first + 1}`, lines: last - first + 1 });
      }
    }
    ts.forEachChild(node, visit);
  }
  visit(tree);
  return found;
}
