import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { performance } from "node:perf_hooks";
import type { Camp, Plan } from "@nightspan/core";
import { planFile, readCamp, summaryLines, writePlan, type SummaryOptions } from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { readInput } from "../files/read-input.ts";
import type { Io } from "../io.ts";
import { planWithSolver } from "../plan-with-solver.ts";
import type { PlanOptions } from "../options.ts";
import { tellRefusals, tellUnknown } from "../refusals.ts";
import { tellSummary } from "../tell-summary.ts";

/** `plan`: plans the camp, prints the summary or the plan file, and writes papers where asked. */
export async function planCommand(path: string, options: PlanOptions, io: Io): Promise<ExitCode> {
  const started = performance.now();
  const text = readInput(io.cwd, path);
  const opened = text.ok ? readCamp(text.value) : text;
  if (!opened.ok) return tellRefusals(path, opened.refusals, io);
  if (
    options.out !== undefined &&
    options.force !== true &&
    existsSync(resolve(io.cwd, options.out, "plan.json"))
  ) {
    return tellRefusals(options.out, [ALREADY_THERE], io);
  }
  const { camp, unknownFields } = opened.value;
  tellUnknown(path, unknownFields, io);
  const planned = await planWithSolver(camp, progress(io));
  if (!planned.ok) return tellRefusals(path, planned.refusals, io);
  const plannedMs = performance.now() - started;
  const plan = planned.value;
  if (options.json === true) io.out(writePlan(planFile(plan)));
  else tellSummary(summaryLines(plan, camp, summaryOptions(options, io)), io);
  if (options.why === true && options.json !== true)
    io.out(`\nRead and planned in ${plannedMs.toFixed(0)} ms.\n`);
  const refused =
    options.out === undefined ? undefined : await writePapers(options.out, plan, camp, options, io);
  return refused ?? exitOf(plan);
}

/** A row is indented by two columns. */
function summaryOptions({ why }: PlanOptions, { columns }: Io): SummaryOptions {
  return { why: why === true, ...(columns === undefined ? {} : { columns: columns - 2 }) };
}

/** Told before the work is done; the other papers are looked at before they are written. */
const ALREADY_THERE = { field: "plan.json", got: "a file that is there", need: "--force to write over it" };

export function exitOf({ verdict, placed, asked }: Plan): ExitCode {
  return verdict === "do-not-hang" || placed < asked ? EXIT.refused : EXIT.done;
}

/** How far the search is, for a person who watches. */
function progress(io: Io): (plan: Plan) => void {
  return ({ placed, asked }) => {
    if (io.watched) io.err(`Searching: ${placed} of ${asked} have a berth so far.\n`);
  };
}

/** Writes the papers; an exit code where a file stands in the way. */
async function writePapers(
  folder: string,
  plan: Plan,
  camp: Camp,
  { force, json }: PlanOptions,
  io: Io,
): Promise<ExitCode | undefined> {
  const { papersOf } = await import("../papers/papers.ts");
  const { putPapers } = await import("../papers/put-papers.ts");
  const { papers, remarks } = await papersOf(plan, camp);
  const put = putPapers(folder, papers, { force: force === true, cwd: io.cwd });
  if (!put.ok) return tellRefusals(folder, put.refusals, io);
  for (const remark of remarks) io.err(`${folder}: ${remark}\n`);
  const tell = json === true ? io.err : io.out;
  tell(`\nFiles in ${folder}: ${filesTold(put.value)}\n`);
  return undefined;
}

/** "plan.json, map.svg, cards.html, 14 in berths/, 28 in cards/". */
function filesTold(names: readonly string[]): string {
  const top = names.filter((name) => !name.includes("/"));
  const folders = new Map<string, number>();
  for (const name of names.filter((other) => other.includes("/"))) {
    const folder = name.slice(0, name.indexOf("/") + 1);
    folders.set(folder, (folders.get(folder) ?? 0) + 1);
  }
  return [...top, ...[...folders].map(([folder, count]) => `${count} in ${folder}`)].join(", ");
}
