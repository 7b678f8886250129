import type { Refusal } from "@nightspan/core";
import { sayRefusal } from "@nightspan/edge";
import { EXIT, type ExitCode } from "./exit-code.ts";
import type { Io } from "./io.ts";

/** Tells every refusal on standard error, one line each. */
export function tellRefusals(file: string, refusals: readonly Refusal[], io: Io): ExitCode {
  io.err(refusals.map((refusal) => `${sayRefusal(file, refusal)}\n`).join(""));
  return EXIT.input;
}

/** Tells of fields that are kept in the file but mean nothing to this version. */
export function tellUnknown(file: string, fields: readonly string[], io: Io): void {
  for (const field of fields)
    io.err(`${file}: ${field}: a field this version does not know; kept, not used\n`);
}
