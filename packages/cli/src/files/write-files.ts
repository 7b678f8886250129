import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";

export interface NewFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/**
 * Writes files whole or not at all: each to a temporary file beside its place, flushed, and only when all are
 * there renamed into place. An interrupt from the keyboard, or a wish to end, waits until that is done.
 */
export function writeFiles(files: readonly NewFile[]): void {
  const wait = () => {
    process.exitCode = INTERRUPTED;
  };
  for (const signal of WAITING) process.on(signal, wait);
  const staged: { readonly temporary: string; readonly path: string }[] = [];
  try {
    for (const file of files) staged.push({ temporary: stage(file), path: file.path });
    for (const { temporary, path } of staged) renameSync(temporary, path);
  } catch (error) {
    for (const { temporary } of staged) rmSync(temporary, { force: true });
    throw error;
  } finally {
    for (const signal of WAITING) process.off(signal, wait);
  }
}

const WAITING = ["SIGINT", "SIGTERM"] as const;

/** The code of a shell for a program that was interrupted. */
const INTERRUPTED = 130;

function stage({ path, content }: NewFile): string {
  makeFolder(dirname(path));
  const temporary = join(dirname(path), `.${basename(path)}.${process.pid}.new`);
  const file = openSync(temporary, "w");
  try {
    writeAll(file, typeof content === "string" ? new TextEncoder().encode(content) : content);
    fsyncSync(file);
  } catch (error) {
    rmSync(temporary, { force: true });
    throw error;
  } finally {
    closeSync(file);
  }
  return temporary;
}

/** Folder by folder: the recursive call of Node never comes back where a folder that cannot be made says "not there". */
function makeFolder(path: string): void {
  if (existsSync(path)) return;
  makeFolder(dirname(path));
  mkdirSync(path);
}

function writeAll(file: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length;) done += writeSync(file, bytes, done);
}
