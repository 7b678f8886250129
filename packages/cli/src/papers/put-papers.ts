import { existsSync, readdirSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { refuse, succeed, type Outcome } from "@nightspan/core";
import { writeFiles } from "../files/write-files.ts";

/** A file of the papers, by its name inside the folder. */
export interface Paper {
  readonly name: string;
  readonly content: string | Uint8Array;
}

export interface PutOptions {
  readonly cwd: string;
  /** Whether files that are there may be written over. */
  readonly force: boolean;
}

/**
 * Puts the papers into a folder, all or none. Nothing is written over without force; with it, drawings of berths
 * that the plan has no more are taken away, so that no old card lies among the new.
 */
export function putPapers(
  folder: string,
  papers: readonly Paper[],
  options: PutOptions,
): Outcome<readonly string[]> {
  const inFolder = (name: string) => join(resolve(options.cwd, folder), name);
  const standing = papers.filter(({ name }) => existsSync(inFolder(name)));
  if (!options.force && standing.length > 0) {
    return {
      ok: false,
      refusals: standing.map(({ name }) => ({
        field: name,
        got: "a file that is there",
        need: "--force to write over it",
      })),
    };
  }
  try {
    writeFiles(papers.map(({ name, content }) => ({ path: inFolder(name), content })));
    takeAwayOld(papers, inFolder);
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    return refuse("--out", error.code, "a folder that files can be written to");
  }
  return succeed(papers.map(({ name }) => name));
}

const OF_A_BERTH = /^berth-\d+(?:-front|-back)?\.svg$/;

function takeAwayOld(papers: readonly Paper[], inFolder: (name: string) => string): void {
  const written = new Set(papers.map(({ name }) => inFolder(name)));
  for (const folder of new Set(papers.map(({ name }) => dirname(inFolder(name))))) {
    for (const name of readdirSync(folder)) {
      const path = join(folder, name);
      if (OF_A_BERTH.test(name) && !written.has(path)) rmSync(path);
    }
  }
}
