import { relative, resolve } from "node:path";
import { stemFindings, succeed, type Camp, type Outcome } from "@nightspan/core";
import {
  namesOf,
  openCamp,
  parseJson,
  plainText,
  readCamp,
  readList,
  readMapping,
  sayFinding,
  sayRefusal,
  writeCamp,
  type BadRow,
  type CampDocument,
  type ForecastMapping,
  type ReadList,
} from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { fetchText, isAddress } from "../files/fetch-text.ts";
import { freeName } from "../files/free-name.ts";
import { copyOf, findCopyAge } from "../files/last-copy.ts";
import { readInput } from "../files/read-input.ts";
import { writeFiles } from "../files/write-files.ts";
import type { Io } from "../io.ts";
import type { ImportOptions } from "../options.ts";
import { tellRefusals } from "../refusals.ts";

/**
 * `import`: trees, a forecast, kit or inspections from a list into a camp file; its last state goes to CAMP.before
 * first, and no older one is lost. A forecast may also come from an address that is given here; nothing else is ever asked.
 */
export async function importCommand(
  path: string,
  { into, skipBad, mapping }: ImportOptions,
  io: Io,
): Promise<ExitCode> {
  const isFetched = isAddress(path);
  const text = isFetched ? await fetchText(path) : readInput(io.cwd, path);
  const before = readInput(io.cwd, into);
  const opened = before.ok ? readCamp(before.value) : before;
  const mapped = mapping === undefined ? succeed(undefined) : mappingOf(mapping, io);
  if (!text.ok) tellRefusals(path, text.refusals, io);
  if (!opened.ok) tellRefusals(into, opened.refusals, io);
  if (!mapped.ok) tellRefusals(mapping ?? "", mapped.refusals, io);
  if (!text.ok && isFetched) tellCopy(into, io);
  if (!text.ok || !before.ok || !opened.ok || !mapped.ok) return EXIT.input;
  const list = readList(text.value, opened.value.document, mapped.value);
  if (!list.ok) {
    if (isFetched) tellCopy(into, io);
    return tellRefusals(path, list.refusals, io);
  }
  if (isFetched && list.value.kind !== "forecast") {
    const got = {
      field: "address",
      got: list.value.kind,
      need: "a forecast; save other lists as a file first",
    };
    return tellRefusals(path, [got], io);
  }
  const changed = mayGoOn(path, list.value, skipBad === true, io);
  if (changed === undefined) return EXIT.input;
  const target = { path: into, text: before.value, ...(isFetched ? { fetched: text.value } : {}) };
  return write(path, { ...list.value, camp: changed }, target, io);
}

/** The camp keeps the forecast it has; what came last lies beside it. */
function tellCopy(into: string, io: Io): void {
  const age = findCopyAge(resolve(io.cwd, copyOf(into)));
  io.err(
    age === undefined
      ? `${into}: nothing changed; no copy was fetched before\n`
      : `${into}: nothing changed; the last good copy is ${age}: ${copyOf(into)}\n`,
  );
}

function mappingOf(path: string, io: Io): Outcome<ForecastMapping> {
  const text = readInput(io.cwd, path);
  const parsed = text.ok ? parseJson(text.value) : text;
  return parsed.ok ? readMapping(parsed.value) : parsed;
}

/** Tells every bad row; nothing is imported beside one unless the user says so. */
function mayGoOn(
  path: string,
  { bad, leftOut, camp }: ReadList,
  skipBad: boolean,
  io: Io,
): CampDocument | undefined {
  for (const column of leftOut) io.err(`${path}: ${column}: means nothing here; left out\n`);
  io.err(bad.flatMap((row) => badLines(path, row)).join(""));
  if (bad.length === 0) return camp;
  if (camp !== undefined && skipBad) {
    io.err(`${path}: ${bad.length} left out\n`);
    return camp;
  }
  if (camp !== undefined) io.err(`${path}: nothing imported; --skip-bad leaves those rows out\n`);
  return undefined;
}

function badLines(path: string, { place, refusals }: BadRow): readonly string[] {
  return refusals.map((refusal) => `${sayRefusal(`${path}: ${place}`, refusal)}\n`);
}

interface Target {
  readonly path: string;
  readonly text: string;
  /** What an address answered, to be kept beside the camp. */
  readonly fetched?: string;
}

type Changed = ReadList & { readonly camp: CampDocument };

function write(path: string, list: Changed, into: Target, io: Io): ExitCode {
  const judged = openCamp(list.camp);
  if (!judged.ok) return tellRefusals(path, judged.refusals, io);
  const file = resolve(io.cwd, into.path);
  const before = freeName(`${file}.before`);
  writeFiles([{ path: before, content: into.text }]);
  const copy = into.fetched === undefined ? [] : [{ path: copyOf(file), content: into.fetched }];
  writeFiles([{ path: file, content: writeCamp(list.camp) }, ...copy]);
  if (list.otherNights > 0) io.err(`${path}: ${list.otherNights} hours of another night left out\n`);
  const kept = list.kind === "inspections" ? `added to ${list.before}` : `in place of ${list.before}`;
  const done = `${counted(list)} from ${path} ${kept}`;
  if (list.kind === "trees") tellStems(into.path, judged.value.camp, io);
  io.out(`${into.path}: ${done}; as it was: ${relative(io.cwd, before)}\n`);
  return EXIT.done;
}

/** Stems that the map has in each other: imported all the same. */
function tellStems(path: string, camp: Camp, io: Io): void {
  for (const finding of stemFindings(camp.ground?.trees ?? [])) {
    io.err(`${plainText(`${path}: look again: ${sayFinding(finding, namesOf(camp))}`)}\n`);
  }
}

function counted({ kind, rows }: ReadList): string {
  const words = {
    trees: ["tree", "trees"],
    forecast: ["hour of forecast", "hours of forecast"],
    kit: ["line of kit", "lines of kit"],
    inspections: ["inspection", "inspections"],
  } as const;
  const [one, more] = words[kind];
  return `${rows} ${rows === 1 ? one : more}`;
}
