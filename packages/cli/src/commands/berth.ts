import {
  DEFAULTS,
  findHangKit,
  pocketTable,
  type Camp,
  type Outcome,
  type PocketRow,
  succeed,
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
  const asked = campAsked(options);
  if (!asked.ok) return tellRefusals("berth", asked.refusals, io);
  const { camp } = asked.value;
  const planned = await planWithSolver(camp);
  if (!planned.ok) return tellRefusals("berth", planned.refusals.map(byOption), io);
  if (options.json === true) io.out(writePlan(planFile(planned.value)));
  else tellSummary(tonightLines(planned.value, camp), io);
  return exitOf(planned.value);
}

/** A table to carry: span and steps are its rows, so neither is an option of it. */
function tellTable(options: BerthOptions, io: Io): ExitCode {
  const { step, stature, mass, trunk, hammock, ridgeline, sling } = options;
  const own = { step, stature, mass, trunk, hammock, ridgeline, sling };
  const stated = Object.fromEntries(Object.entries(own).filter(([, value]) => value !== undefined));
  const asked = campAsked({ ...stated, span: `${STAND_IN_SPAN_M}` });
  const idle = (["span", "steps", "fall", "json"] as const)
    .filter((name) => options[name] !== undefined)
    .map((name) => ({
      field: `--${name}`,
      got: options[name],
      need: "nothing: the table is for every span",
    }));
  if (!asked.ok || idle.length > 0) {
    return tellRefusals("berth", [...idle, ...(asked.ok ? [] : asked.refusals)], io);
  }
  const rows = tableOf(asked.value.camp, asked.value.two);
  if (!rows.ok) return tellRefusals("berth", rows.refusals.map(byOption), io);
  tellSummary(pocketLines(rows.value, asked.value.two.statureM), io);
  return EXIT.done;
}

interface Asked {
  readonly two: TwoTrees;
  readonly camp: Camp;
}

/** The camp of one that the options ask for, or all that is wrong with them, in writing and in range. */
function campAsked(options: BerthOptions): Outcome<Asked> {
  const { two, refusals } = readOptions(options);
  const opened = openCamp(campOfOne(two));
  if (opened.ok && refusals.length === 0) return succeed({ two, camp: opened.value.camp });
  return { ok: false, refusals: [...refusals, ...(opened.ok ? [] : opened.refusals.map(byOption))] };
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

/** Stand in for what could not be read while the rest is judged; no answer is given from them. */
const STAND_IN_SPAN_M = 4;
const STAND_IN_STATURE_M = 1.7;

/** The options in SI units, and what could not be read of them. */
function readOptions(options: BerthOptions): { readonly two: TwoTrees; readonly refusals: Refusal[] } {
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
  if (options.stature === undefined) {
    refusals.push({ field: "--stature", got: undefined, need: "how tall you are, such as 1.75 or 5ft9in" });
  }
  const shortest = length("sling");
  const span = length("span") ?? STAND_IN_SPAN_M;
  const two = {
    ...given("spanM", steps === undefined ? span : undefined),
    ...given("steps", steps),
    ...given("stepM", length("step")),
    statureM: length("stature") ?? STAND_IN_STATURE_M,
    ...given("massKg", mass),
    ...given("fallM", length("fall")),
    ...given("trunkM", length("trunk")),
    ...given("hammockLengthM", length("hammock")),
    ...given("ridgelineM", length("ridgeline")),
    ...(shortest === undefined ? {} : { sling: { shortestM: shortest } }),
  };
  return { two, refusals };
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
