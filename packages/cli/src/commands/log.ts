import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { refuse, succeed, withLog, type Outcome, type Refusal } from "@nightspan/core";
import {
  EMPTY_LOG,
  learntLines,
  nightOfPlan,
  openLog,
  parseJson,
  readAnswers,
  readCamp,
  readLog,
  readPlan,
  withNight,
  writeLog,
  type LogDocument,
  type LoggedNightDocument,
} from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { readInput } from "../files/read-input.ts";
import { writeFiles } from "../files/write-files.ts";
import type { Io } from "../io.ts";
import type { LogOptions } from "../options.ts";
import { tellRefusals } from "../refusals.ts";

/** `log`: writes a night into a log, or tells what a log has taught about the sleepers of a camp. */
export function logCommand(path: string, options: LogOptions, io: Io): ExitCode {
  const before = logAt(path, io);
  if (!before.ok) return tellRefusals(path, before.refusals, io);
  const night = options.plan === undefined ? undefined : nightOf(options.plan, options, io);
  if (night !== undefined && !night.ok) return tellRefusals(options.plan ?? "log", night.refusals, io);
  const document = night === undefined ? before.value : withNight(before.value, night.value);
  const judged = openLog(document);
  if (!judged.ok) return tellRefusals(path, judged.refusals, io);
  if (night !== undefined) {
    writeFiles([{ path: resolve(io.cwd, path), content: writeLog(document) }]);
    io.out(`${path}: ${counted(night.value.sleepers.length, "sleeper")} on ${night.value.date} written.\n`);
  }
  if (options.camp === undefined) {
    if (night === undefined) io.out(`${path}: ${counted(document.nights.length, "night")}.\n`);
    return EXIT.done;
  }
  const text = readInput(io.cwd, options.camp);
  const opened = text.ok ? readCamp(text.value) : text;
  if (!opened.ok) return tellRefusals(options.camp, opened.refusals, io);
  const camp = withLog(opened.value.camp, judged.value.nights);
  io.out(`${learntLines(camp, options.why === true).join("\n")}\n`);
  return EXIT.done;
}

/** A log that is not there yet is an empty one. */
function logAt(path: string, io: Io): Outcome<LogDocument> {
  if (!existsSync(resolve(io.cwd, path))) return succeed(EMPTY_LOG);
  const text = readInput(io.cwd, path);
  const read = text.ok ? readLog(text.value) : text;
  return read.ok ? succeed(read.value.document) : read;
}

function nightOf(planPath: string, options: LogOptions, io: Io): Outcome<LoggedNightDocument> {
  const text = readInput(io.cwd, planPath);
  const plan = text.ok ? readPlan(text.value) : text;
  if (!plan.ok) return plan;
  const { date, measuredLow, note } = options;
  if (date === undefined) return refuse("--date", undefined, "the day of the night, such as 2027-05-14");
  const low = measuredLow === undefined ? undefined : Number(measuredLow);
  if (low !== undefined && !(low >= -60 && low <= 40))
    return refuse("--measured-low", measuredLow, "a number from -60 to 40 °C");
  const answers = options.answers === undefined ? oneAnswer(options) : answersAt(options.answers, io);
  if (!answers.ok) return answers;
  const lying = new Set(plan.value.berths.map(({ sleeper }) => sleeper));
  const strangers = answers.value.flatMap(({ sleeper }): Refusal[] => {
    const need = "a sleeper of the plan";
    return lying.has(sleeper) ? [] : [{ field: "sleeper", got: sleeper, need }];
  });
  if (strangers.length > 0) return { ok: false, refusals: strangers };
  const told = {
    date,
    ...(low === undefined ? {} : { measured_low_c: low }),
    ...(note === undefined || options.sleeper !== undefined ? {} : { note }),
  };
  return succeed(nightOfPlan(plan.value, told, answers.value));
}

function answersAt(path: string, io: Io): ReturnType<typeof readAnswers> {
  const text = readInput(io.cwd, path);
  const parsed = text.ok ? parseJson(text.value) : text;
  return parsed.ok ? readAnswers(parsed.value) : parsed;
}

/** The answer of one sleeper as the options give it. */
function oneAnswer(options: LogOptions): ReturnType<typeof readAnswers> {
  const { sleeper, under, over, woke, trouble, leaveOut, note } = options;
  if (sleeper === undefined) return refuse("--sleeper", undefined, "--sleeper or --answers");
  const given = {
    sleeper,
    under,
    over,
    woke_at: woke,
    trouble: trouble?.split(","),
    leave_out: leaveOut,
    note,
  };
  return readAnswers([Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined))]);
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? "" : "s"}`;
}
