import {
  DEFAULTS,
  findHangKit,
  pocketTable,
  type Camp,
  type Outcome,
  type PocketRow,
  type Refusal,
} from "@nightspan/core";
import {
  campOfOne,
  openCamp,
  parseLength,
  parseMass,
  planFile,
  pocketLines,
  tonightLines,
  writePlan,
  type TwoTrees,
} from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import type { Io } from "../io.ts";
import { planWithSolver } from "../plan-with-solver.ts";
import type { BerthOptions } from "../options.ts";
import { tellRefusals } from "../refusals.ts";
import { tellSummary } from "../tell-summary.ts";
import { exitOf } from "./plan.ts";

/** `berth`: two trees, tonight. A camp of one, told in a sentence for each tree. */
export async function berthCommand(options: BerthOptions, io: Io): Promise<ExitCode> {
  if (options.table === true) return tellTable(options, io);
  const two = readOptions(options);
  if (!two.ok) return tellRefusals("berth", two.refusals, io);
  const opened = openCamp(campOfOne(two.value));
  if (!opened.ok) return tellRefusals("berth", opened.refusals.map(byOption), io);
  const { camp } = opened.value;
  const planned = await planWithSolver(camp, () => undefined);
  if (!planned.ok) return tellRefusals("berth", planned.refusals.map(byOption), io);
  if (options.json === true) io.out(writePlan(planFile(planned.value)));
  else tellSummary(tonightLines(planned.value, camp), io);
  return exitOf(planned.value);
}

/** A table to carry: span and steps are its rows, so neither is an option of it. */
function tellTable(options: BerthOptions, io: Io): ExitCode {
  const asked = readOptions({ ...options, span: `${TABLE_SPAN_M}` });
  const given = asked.ok ? [] : asked.refusals;
  const idle = (["span", "steps", "fall", "json"] as const)
    .filter((name) => options[name] !== undefined)
    .map((name) => ({
      field: `--${name}`,
      got: options[name],
      need: "nothing: the table is for every span",
    }));
  if (!asked.ok || idle.length > 0) return tellRefusals("berth", [...idle, ...given], io);
  const opened = openCamp(campOfOne(asked.value));
  if (!opened.ok) return tellRefusals("berth", opened.refusals.map(byOption), io);
  const rows = tableOf(opened.value.camp, asked.value);
  if (!rows.ok) return tellRefusals("berth", rows.refusals.map(byOption), io);
  tellSummary(pocketLines(rows.value, asked.value.statureM), io);
  return EXIT.done;
}

function tableOf(camp: Camp, { trunkM }: TwoTrees): Outcome<readonly PocketRow[]> {
  const [sleeper] = camp.sleepers;
  const kit = sleeper === undefined ? undefined : findHangKit(camp, sleeper.id);
  if (sleeper === undefined || kit === undefined) throw new Error("a camp of one has a sleeper with kit");
  return pocketTable({
    kit,
    trunkM: trunkM ?? DEFAULTS["ground.pairs[].dbh_cm"].value / 100,
    stepM: sleeper.stepM,
    setterStatureM: sleeper.statureM,
    rules: camp.rules,
  });
}

/** Stands in for a span while the other options are read; no row depends on it. */
const TABLE_SPAN_M = 4;

/** The options in SI units, or all that is wrong with them. */
function readOptions(options: BerthOptions): Outcome<TwoTrees> {
  const refusals: Refusal[] = [];
  const value = <T>(outcome: Outcome<T>): T | undefined => {
    if (outcome.ok) return outcome.value;
    refusals.push(...outcome.refusals);
    return undefined;
  };
  const length = (name: keyof BerthOptions) => {
    const written = options[name];
    return typeof written === "string" ? value(parseLength(`--${name}`, written)) : undefined;
  };
  const mass = options.mass === undefined ? undefined : value(parseMass("--mass", options.mass));
  const steps = options.steps === undefined ? undefined : value(countOf("--steps", options.steps));
  if ((options.span === undefined) === (options.steps === undefined)) {
    refusals.push({ field: "--span", got: options.span, need: "--span or --steps, one of the two" });
  }
  const shortest = length("sling");
  const two = {
    ...given("spanM", length("span")),
    ...given("steps", steps),
    ...given("stepM", length("step")),
    statureM: length("stature") ?? 0,
    ...given("massKg", mass),
    ...given("fallM", length("fall")),
    ...given("trunkM", length("trunk")),
    ...given("hammockLengthM", length("hammock")),
    ...given("ridgelineM", length("ridgeline")),
    ...(shortest === undefined ? {} : { sling: { shortestM: shortest } }),
  };
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value: two };
}

function given<K extends string, T>(key: K, value: T | undefined): Partial<Record<K, T>> {
  const one: Partial<Record<K, T>> = {};
  if (value !== undefined) one[key] = value;
  return one;
}

function countOf(field: string, written: string): Outcome<number> {
  const count = Number(written);
  if (written.trim() !== "" && Number.isFinite(count)) return { ok: true, value: count };
  return { ok: false, refusals: [{ field, got: written, need: "a number of steps, such as 6 or 6.5" }] };
}

const OPTIONS: Readonly<Record<string, string>> = {
  "ground.pairs[0].span_m": "--span",
  "ground.pairs[0].steps": "--steps",
  "ground.pairs[0].fall_m": "--fall",
  "ground.pairs[0].dbh_cm[0]": "--trunk",
  "sleepers[0].stature_m": "--stature",
  "sleepers[0].step_m": "--step",
  "sleepers[0].mass_kg": "--mass",
  trunkM: "--trunk",
  stepM: "--step",
  "kit[0].length_m": "--hammock",
  "kit[0].ridgeline_m": "--ridgeline",
  "kit[0].min_m": "--sling",
  "kit[1].min_m": "--sling",
};

/** A refusal of the camp of one, by the option that the value came from. */
function byOption(refusal: Refusal): Refusal {
  return { ...refusal, field: OPTIONS[refusal.field] ?? refusal.field };
}
