import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { performance } from "node:perf_hooks";
import {
  succeed,
  withLog,
  type Camp,
  type Outcome,
  type Plan,
  type PlanBefore,
  type PlanRepair,
  type PlanTools,
} from "@nightspan/core";
import { planFile, readCamp, readLog, summaryLines, writePlan, type SummaryOptions } from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { readInput } from "../files/read-input.ts";
import { readPlanBefore } from "../files/read-plan-before.ts";
import type { Io } from "../io.ts";
import { explainWithSolver, planWithSolver, repairWithSolver } from "../plan-with-solver.ts";
import type { PlanOptions } from "../options.ts";
import { tellRefusals, tellUnknown } from "../refusals.ts";
import { tellSummary } from "../tell-summary.ts";
import { withRose } from "../with-rose.ts";

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
  const { unknownFields } = opened.value;
  const learnt = withLogAt(opened.value.camp, options.log, io);
  if (!learnt.ok) return tellRefusals(options.log ?? "", learnt.refusals, io);
  const camp = learnt.value;
  tellUnknown(path, unknownFields, io);
  const before = options.from === undefined ? undefined : readPlanBefore(io.cwd, options.from);
  if (before !== undefined && !before.ok) return tellRefusals(options.from ?? "", before.refusals, io);
  const planned = await plannedOrRepaired(camp, before?.value, options, io);
  if (!planned.ok) return tellRefusals(path, planned.refusals, io);
  const plannedMs = performance.now() - started;
  const { plan, repair } = planned.value;
  const told = options.why === true && options.json !== true ? withRose(plan, camp) : plan;
  if (options.json === true) io.out(writePlan(planFile(plan, repair)));
  else tellSummary(summaryLines(told, camp, summaryOptions(options, io, repair)), io);
  if (options.why === true && options.json !== true)
    io.out(`\nRead and planned in ${plannedMs.toFixed(0)} ms.\n`);
  const refused =
    options.out === undefined ? undefined : await writePapers(options.out, planned.value, camp, options, io);
  return refused ?? exitOf(plan);
}

/** The camp with what a log has taught about its sleepers. */
function withLogAt(camp: Camp, path: string | undefined, io: Io): Outcome<Camp> {
  if (path === undefined) return succeed(camp);
  const text = readInput(io.cwd, path);
  const log = text.ok ? readLog(text.value) : text;
  return log.ok ? succeed(withLog(camp, log.value.nights)) : log;
}

/** A row is indented by two columns. */
function summaryOptions(
  { why }: PlanOptions,
  { columns }: Io,
  repair: PlanRepair | undefined,
): SummaryOptions {
  return {
    why: why === true,
    ...(columns === undefined ? {} : { columns: columns - 2 }),
    ...(repair === undefined ? {} : { repair }),
  };
}

interface Planned {
  readonly plan: Plan;
  readonly repair?: PlanRepair;
}

/** The camp planned, or a plan before mended; with what would change it where not everybody has a berth. */
async function plannedOrRepaired(
  camp: Camp,
  before: PlanBefore | undefined,
  { why }: PlanOptions,
  io: Io,
): Promise<Outcome<Planned>> {
  if (before === undefined) {
    const planned = await planWithSolver(camp, progress(io));
    if (!planned.ok) return planned;
    return succeed({ plan: await explainWithSolver(planned.value, camp, why === true) });
  }
  const mended = await repairWithSolver(before, camp);
  if (!mended.ok) return mended;
  const plan = await explainWithSolver(mended.value.repaired, camp, why === true);
  return succeed({ plan, repair: mended.value });
}

/** Told before the work is done; the other papers are looked at before they are written. */
const ALREADY_THERE = { field: "plan.json", got: "a file that is there", need: "--force to write over it" };

/** Where there is no ground nobody is placed; there it counts whether the store has every part for everybody. */
export function exitOf({ verdict, placed, asked, fit }: Plan): ExitCode {
  if (fit !== undefined) {
    const lacks = fit.people.some(({ parts }) => parts.some(({ choices }) => choices.length === 0));
    return verdict === "do-not-hang" || lacks ? EXIT.refused : EXIT.done;
  }
  return verdict === "do-not-hang" || placed < asked ? EXIT.refused : EXIT.done;
}

/** How far the search is, for a person who watches. */
function progress(io: Io): Pick<PlanTools, "onIncumbent" | "onPairs"> {
  if (!io.watched) return {};
  let last = "";
  const tell = (line: string): void => {
    if (line !== last) io.err(line);
    last = line;
  };
  return {
    onPairs: ({ pairs, asked }) => {
      const so = Math.min(pairs.length, asked);
      tell(`Preliminary: pairs of trees for ${so} of ${asked}. Hangs are not all worked out.\n`);
    },
    onIncumbent: ({ placed, asked }) => {
      tell(`Searching: ${placed} of ${asked} have a berth so far.\n`);
    },
  };
}

/** Writes the papers; an exit code where a file stands in the way. */
async function writePapers(
  folder: string,
  { plan, repair }: Planned,
  camp: Camp,
  { force, json }: PlanOptions,
  io: Io,
): Promise<ExitCode | undefined> {
  const { papersOf } = await import("../papers/papers.ts");
  const { putPapers } = await import("../papers/put-papers.ts");
  const { papers, remarks } = await papersOf(plan, camp, repair);
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
