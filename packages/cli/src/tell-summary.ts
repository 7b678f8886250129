import { styleText } from "node:util";
import { wrapped, type SummaryLine } from "@nightspan/edge";
import type { Io } from "./io.ts";

/** Prints a summary: set off and broken to the terminal's width, or plain and whole for a pipe. */
export function tellSummary(lines: readonly SummaryLine[], io: Io): void {
  io.out(lines.map((line) => `${printed(line, io)}\n`).join(""));
}

function printed({ kind, text }: SummaryLine, { columns, colour }: Io): string {
  const indent = kind === "item" || kind === "row" ? "  " : "";
  const width = columns === undefined || kind === "row" ? Infinity : Math.max(40, columns) - indent.length;
  const body = wrapped(text, width, "  ")
    .map((part) => indent + part)
    .join("\n");
  return colour && STYLE[kind] !== undefined ? styleText(STYLE[kind], body, { validateStream: false }) : body;
}

const STYLE: Readonly<Partial<Record<SummaryLine["kind"], "bold" | "inverse" | "underline">>> = {
  verdict: "bold",
  heading: "underline",
};
