import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Io } from "./io.ts";
import { run } from "./run.ts";

export const ROOT = fileURLToPath(new URL("../../../", import.meta.url));
export const EXAMPLES = join(ROOT, "examples");

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs one command line in this process, with what it printed kept. */
export async function ran(
  args: readonly string[],
  over: Partial<Io> & { input?: string } = {},
): Promise<Ran> {
  const { input = "", ...rest } = over;
  const printed = { out: "", err: "" };
  const io: Io = {
    cwd: ROOT,
    out: (text) => {
      printed.out += text;
    },
    err: (text) => {
      printed.err += text;
    },
    stdin: () => Promise.resolve(input),
    columns: undefined,
    colour: false,
    watched: false,
    ...rest,
  };
  const code = await run(args, io);
  return { code, ...printed };
}

/** An empty folder of its own, with some files in it. */
export function folder(files: Readonly<Record<string, string>> = {}): string {
  const path = mkdtempSync(join(tmpdir(), "nightspan-test-"));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(path, name), content);
  return path;
}

export function exampleText(name: string): string {
  return readFileSync(join(EXAMPLES, `${name}.camp.json`), "utf8");
}

/** Lines of a text that ends in a line break. */
export function lines(text: string): readonly string[] {
  return text.split("\n").slice(0, -1);
}
