import { stemFindings, type Camp, type Finding } from "@nightspan/core";
import {
  findingFile,
  namesOf,
  plainText,
  sayFinding,
  readCamp,
  refusalJson,
  type OpenedCamp,
} from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { readInput } from "../files/read-input.ts";
import type { Io } from "../io.ts";
import { tellRefusals, tellUnknown } from "../refusals.ts";

/** `check`: reads and judges the camp file, and does nothing else. */
export function checkCommand(path: string, options: { readonly json?: boolean }, io: Io): ExitCode {
  const text = readInput(io.cwd, path);
  const opened = text.ok ? readCamp(text.value) : text;
  if (!opened.ok) {
    if (options.json === true) print({ ok: false, refusals: opened.refusals.map(refusalJson) }, io);
    return tellRefusals(path, opened.refusals, io);
  }
  const { camp, unknownFields } = opened.value;
  tellUnknown(path, unknownFields, io);
  if (options.json === true) print(checkJson(opened.value), io);
  else io.out(`${checkLines(path, camp).join("\n")}\n`);
  return EXIT.done;
}

function print(value: object, io: Io): void {
  io.out(`${JSON.stringify(value, null, 2)}\n`);
}

function checkJson({ camp, unknownFields }: OpenedCamp): object {
  return {
    ok: true,
    camp: camp.name,
    ...counts(camp),
    look_again: stemsOf(camp).map(findingFile),
    unknown_fields: unknownFields,
    defaults_used: camp.defaultsUsed.map(({ field, value }) => ({ field, value })),
  };
}

/** Stems that the map has in each other; the camp can be used all the same. */
function stemsOf({ ground }: Camp): readonly Finding[] {
  return stemFindings(ground?.trees ?? []);
}

function counts({ ground, sleepers, kit }: Camp) {
  const trees = ground?.trees ?? [];
  return {
    trees: trees.length,
    not_looked_at: trees.filter(({ lookedAt }) => lookedAt === undefined).length,
    pairs: ground?.pairs.length ?? 0,
    sleepers: sleepers.length,
    kit: kit.reduce((sum, { count }) => sum + count, 0),
  };
}

function checkLines(path: string, camp: Camp): readonly string[] {
  const { trees, not_looked_at, pairs, sleepers, kit } = counts(camp);
  const ground = [
    trees > 0 ? `${many(trees, "tree")} (${not_looked_at} not looked at yet)` : "",
    pairs > 0 ? many(pairs, "stated pair") : "",
  ].filter((part) => part !== "");
  const parts = [
    ground.join(" and ") || "no ground",
    many(sleepers, "sleeper"),
    many(kit, "piece of kit", "pieces of kit"),
  ];
  return [
    plainText(`${path} can be used: ${camp.name}`),
    `  ${parts.join(", ")}`,
    ...stemsOf(camp).map((finding) => plainText(`  Look again: ${sayFinding(finding, namesOf(camp))}`)),
    `  ${many(camp.defaultsUsed.length, "field")} taken from the table of defaults; --json lists them`,
  ];
}

function many(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}
