import type { Outcome } from "@nightspan/core";
import { MODELS, MODEL_NAMES, parseJson, refusalJson, runModel, type ModelAnswer } from "@nightspan/edge";
import { EXIT, type ExitCode } from "../exit-code.ts";
import type { Io } from "../io.ts";
import { tellRefusals } from "../refusals.ts";

/** `model`: one JSON object in, one JSON object out, whatever it says; without a name, the list of models. */
export async function modelCommand(
  name: string | undefined,
  options: { readonly json?: boolean },
  io: Io,
): Promise<ExitCode> {
  if (name === undefined) {
    io.out(options.json === true ? `${JSON.stringify(MODELS, null, 2)}\n` : list());
    return EXIT.done;
  }
  const answer = await answerTo(name, io);
  if (answer.ok) {
    io.out(`${JSON.stringify({ ok: true, ...answer.value }, null, 2)}\n`);
    return EXIT.done;
  }
  io.out(`${JSON.stringify({ ok: false, refusals: answer.refusals.map(refusalJson) }, null, 2)}\n`);
  return tellRefusals(`model ${name}`, answer.refusals, io);
}

function list(): string {
  const widest = Math.max(...MODELS.map(({ name }) => name.length));
  return MODELS.map(({ name, about }) => `${name.padEnd(widest)}  ${about}\n`).join("");
}

async function answerTo(name: string, io: Io): Promise<Outcome<ModelAnswer>> {
  if (!MODEL_NAMES.includes(name)) return runModel(name, undefined);
  const input = parseJson(await io.stdin());
  if (!input.ok) return input;
  const alone = runModel(name, input.value);
  if (!alone.ok || alone.value.value["proven"] !== false) return alone;
  const { loadSolver } = await import("../solver/load-solver.ts");
  return runModel(name, input.value, { solver: await loadSolver() });
}
