import { CommanderError } from "commander";
import { EXIT } from "./exit-code.ts";
import type { Io } from "./io.ts";
import { makeProgram } from "./program.ts";

/** Runs one command line and says what to end with. What it throws is our own mistake, told once here. */
export async function run(args: readonly string[], io: Io): Promise<number> {
  let code: number = EXIT.done;
  const program = makeProgram(io, (ended) => {
    code = ended;
  });
  try {
    await program.parseAsync(args, { from: "user" });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.input;
    io.err(`Nightspan made a mistake. Nothing was changed on disk.\n${told(error)}\n`);
    return EXIT.mistake;
  }
}

function told(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
