import { closeSync, fstatSync, openSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { refuse, succeed, type Outcome } from "@nightspan/core";
import { MOST_BYTES } from "@nightspan/edge";

/** The text of a file to read, at most 20 MB, in UTF-8. */
export function readInput(cwd: string, path: string): Outcome<string> {
  let file: number;
  try {
    file = openSync(resolve(cwd, path), "r");
  } catch (error) {
    return refuse("file", reason(error), "a file that can be read");
  }
  try {
    const { size } = fstatSync(file);
    if (size > MOST_BYTES) return refuse("file", `${(size / 1e6).toFixed(1)} MB`, "at most 20 MB");
    return decode(readFileSync(file));
  } catch (error) {
    return refuse("file", reason(error), "a file that can be read");
  } finally {
    closeSync(file);
  }
}

function decode(bytes: Buffer): Outcome<string> {
  try {
    return succeed(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return refuse("file", "bytes that are no text", "text in UTF-8");
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "no such file",
  ENOTDIR: "no such folder",
  EISDIR: "a folder",
  EACCES: "a file that may not be read",
  EPERM: "a file that may not be read",
};

function reason(error: unknown): string {
  if (!(error instanceof Error)) throw error;
  const code = "code" in error && typeof error.code === "string" ? error.code : "";
  return REASONS[code] ?? (code === "" ? error.message : code);
}
