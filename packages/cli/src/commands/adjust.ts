import { refuse, succeed, SYMPTOMS, type FoundOnTheSpot, type Outcome, type Symptom } from "@nightspan/core";
import { adjustFile, adjustLines, checkSavedBerth, readMeasured, readPlan } from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import { readInput } from "../files/read-input.ts";
import type { Io } from "../io.ts";
import type { AdjustOptions } from "../options.ts";
import { tellRefusals } from "../refusals.ts";
import { tellSummary } from "../tell-summary.ts";

/** `adjust`: the as-hung check of one berth of a saved plan. Ends with 1 while it is not to be hung like this. */
export function adjustCommand(path: string, options: AdjustOptions, io: Io): ExitCode {
  const text = readInput(io.cwd, path);
  const plan = text.ok ? readPlan(text.value) : text;
  const found = readFound(options, io);
  if (!plan.ok) tellRefusals(path, plan.refusals, io);
  if (!found.ok) tellRefusals(options.measured ?? "adjust", found.refusals, io);
  if (!plan.ok || !found.ok) return EXIT.input;
  const checked = checkSavedBerth(plan.value, options.berth, found.value);
  if (!checked.ok) return tellRefusals(path, checked.refusals, io);
  const { berth, check } = checked.value;
  if (options.json === true) io.out(`${JSON.stringify(adjustFile(berth.id, check), null, 2)}\n`);
  else tellSummary(adjustLines(checked.value), io);
  return check.verdict === "do-not-hang" ? EXIT.refused : EXIT.done;
}

/** What was found: a file, a symptom, or both; the option goes before the file. */
function readFound({ measured, symptom }: AdjustOptions, io: Io): Outcome<FoundOnTheSpot> {
  if (measured === undefined && symptom === undefined) {
    return refuse("--measured", undefined, "--measured or --symptom, at least one of the two");
  }
  const text = measured === undefined ? succeed("{}") : readInput(io.cwd, measured);
  const found = text.ok ? readMeasured(text.value) : text;
  if (symptom === undefined) return found;
  if (isSymptom(symptom)) return found.ok ? succeed({ ...found.value, symptom }) : found;
  const refusals = [{ field: "--symptom", got: symptom, need: `one of ${SYMPTOMS.join(", ")}` }];
  return { ok: false, refusals: found.ok ? refusals : [...found.refusals, ...refusals] };
}

function isSymptom(name: string): name is Symptom {
  return SYMPTOMS.some((symptom) => symptom === name);
}
