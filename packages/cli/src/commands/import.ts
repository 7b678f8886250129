import { relative, resolve } from "node:path";
import type { Outcome } from "@nightspan/core";
import {
  importTrees,
  openCamp,
  readCamp,
  readTreesCsv,
  readTreesGeoJson,
  readTreesGpx,
  sayRefusal,
  writeCamp,
  type BadRow,
  type OpenedCamp,
  type TreeList,
} from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { freeName } from "../files/free-name.ts";
import { readInput } from "../files/read-input.ts";
import { writeFiles } from "../files/write-files.ts";
import type { Io } from "../io.ts";
import type { ImportOptions } from "../options.ts";
import { tellRefusals } from "../refusals.ts";

/** `import`: trees from a list into a camp file; its last state goes to CAMP.before first, and no older one is lost. */
export function importCommand(path: string, { into, skipBad }: ImportOptions, io: Io): ExitCode {
  const text = readInput(io.cwd, path);
  const list = text.ok ? readList(path, text.value) : text;
  const before = readInput(io.cwd, into);
  const opened = before.ok ? readCamp(before.value) : before;
  if (!list.ok || !before.ok || !opened.ok) {
    if (!list.ok) tellRefusals(path, list.refusals, io);
    return opened.ok ? EXIT.input : tellRefusals(into, opened.refusals, io);
  }
  if (!mayGoOn(path, list.value, skipBad === true, io)) return EXIT.input;
  return write(path, list.value, opened.value, { path: into, text: before.value }, io);
}

function readList(path: string, text: string): Outcome<TreeList> {
  const kind = /\.(\w+)$/.exec(path.toLowerCase())?.[1];
  switch (kind) {
    case "geojson":
    case "json":
      return readTreesGeoJson(text);
    case "gpx":
      return readTreesGpx(text);
    default:
      return readTreesCsv(text);
  }
}

/** Tells every bad row; nothing is imported beside one unless the user says so. */
function mayGoOn(path: string, { rows, bad, leftOut }: TreeList, skipBad: boolean, io: Io): boolean {
  for (const column of leftOut) io.err(`${path}: ${column}: means nothing here; left out\n`);
  io.err(bad.flatMap((row) => badLines(path, row)).join(""));
  if (bad.length === 0) return true;
  if (rows.length > 0 && skipBad) {
    io.err(`${path}: ${bad.length} left out\n`);
    return true;
  }
  if (rows.length > 0) io.err(`${path}: nothing imported; --skip-bad leaves those rows out\n`);
  return false;
}

function badLines(path: string, { place, refusals }: BadRow): readonly string[] {
  return refusals.map((refusal) => `${sayRefusal(`${path}: ${place}`, refusal)}\n`);
}

interface Target {
  readonly path: string;
  readonly text: string;
}

function write(path: string, list: TreeList, { document }: OpenedCamp, into: Target, io: Io): ExitCode {
  const changed = importTrees(document, list);
  const judged = openCamp(changed);
  if (!judged.ok) return tellRefusals(path, judged.refusals, io);
  const file = resolve(io.cwd, into.path);
  const before = freeName(`${file}.before`);
  writeFiles([{ path: before, content: into.text }]);
  writeFiles([{ path: file, content: writeCamp(changed) }]);
  const had = document.ground?.trees?.length ?? 0;
  io.out(
    `${into.path}: ${list.rows.length} trees from ${path} in place of ${had}; as it was: ${relative(io.cwd, before)}\n`,
  );
  return EXIT.done;
}
