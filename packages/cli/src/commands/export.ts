import { LISTS, readCamp, type ListKind } from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { readInput } from "../files/read-input.ts";
import type { Io } from "../io.ts";
import { tellRefusals } from "../refusals.ts";

/** `export`: one list of a camp as the CSV text that `import` reads. */
export function exportCommand(path: string, name: string, io: Io): ExitCode {
  const text = readInput(io.cwd, path);
  const opened = text.ok ? readCamp(text.value) : text;
  if (!opened.ok) return tellRefusals(path, opened.refusals, io);
  if (!isList(name)) {
    const need = `one of ${Object.keys(LISTS).join(", ")}`;
    return tellRefusals("export", [{ field: "LIST", got: name, need }], io);
  }
  io.out(LISTS[name](opened.value.document));
  return EXIT.done;
}

function isList(name: string): name is ListKind {
  return Object.hasOwn(LISTS, name);
}
