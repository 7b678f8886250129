import { DEFAULTS, type DefaultEntry } from "./defaults.ts";
import { RULE_DEFAULTS, type RuleDefault } from "./rule-defaults.ts";

/** The table of defaults as the handbook prints it. */
export function defaultsPage(): string {
  return [
    "# Defaults",
    "",
    "What is taken for granted where the camp file is silent. A plan lists each default that it used, by these keys.",
    "Written from `packages/core/src/plan/defaults.ts` and `rule-defaults.ts`; a test keeps this page equal to them.",
    "",
    "## Fields of the camp file, and what a hang aims at",
    "",
    ...table("lllll", [["key", "value", "unit", "why", "source"], ...Object.entries(DEFAULTS).map(fieldRow)]),
    "",
    "## House rules by preset",
    "",
    "Our own neutral figures: common practice, no source. The land manager's figure wins wherever it is given.",
    "",
    ...table("lrrrll", [
      ["key", "cautious", "usual", "backcountry", "unit", "why"],
      ...Object.entries(RULE_DEFAULTS).map(ruleRow),
    ]),
    "",
  ].join("\n");
}

function fieldRow([key, { value, unit, why, source }]: [string, DefaultEntry]): string[] {
  return [`\`${key}\``, String(value), unit, why, source];
}

function ruleRow([key, { cautious, usual, backcountry, unit, why }]: [string, RuleDefault]): string[] {
  const values = [cautious, usual, backcountry].map((value) => String(value ?? "none"));
  return [`\`rules.${key}\``, ...values, unit, why];
}

/** A table with its columns padded; `aligns` has one letter a column. */
function table(aligns: string, [head = [], ...body]: readonly (readonly string[])[]): string[] {
  const widths = head.map((title, column) =>
    Math.max(title.length, ...body.map((row) => row[column]?.length ?? 0)),
  );
  const isRight = (column: number): boolean => aligns[column] === "r";
  const line = (row: readonly string[]): string => {
    const cells = row.map((cell, column) => {
      const width = widths[column] ?? 0;
      return isRight(column) ? cell.padStart(width) : cell.padEnd(width);
    });
    return `| ${cells.join(" | ")} |`;
  };
  const rule = widths.map((width, column) =>
    isRight(column) ? `${"-".repeat(width - 1)}:` : "-".repeat(width),
  );
  return [line(head), line(rule), ...body.map(line)];
}
