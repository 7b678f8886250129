import { Command } from "commander";
import { ENGINE } from "@nightspan/edge";
import type { AdjustOptions, BerthOptions, ImportOptions, LogOptions, PlanOptions } from "./options.ts";
import type { Io } from "./io.ts";

/** What a command needs to answer: the process round it, and where its exit code goes. */
export interface Session {
  readonly io: Io;
  readonly end: (code: number) => void;
}

/** The command line. Each command's code is loaded only when it is asked for. */
export function makeProgram(io: Io, end: (code: number) => void): Command {
  const session: Session = { io, end };
  const program = new Command("nightspan")
    .description("Plans a night in hammocks for a group: which trees, who hangs where and in what, how high.")
    .version(ENGINE, "-V, --version", "tell the version")
    .helpOption("-h, --help", "tell how a command is used")
    .showSuggestionAfterError(true)
    .exitOverride()
    .configureOutput({
      writeOut: io.out,
      writeErr: io.err,
      outputError: (message, write) => write(`nightspan: ${oneLine(message)}\n`),
    });
  addPlan(program, session);
  addBerth(program, session);
  addAdjust(program, session);
  addLog(program, session);
  addCheck(program, session);
  addImport(program, session);
  addExport(program, session);
  addModel(program, session);
  addSchema(program, session);
  return program;
}

function addPlan(program: Command, session: Session): void {
  program
    .command("plan")
    .description("plan a camp: who hangs between which trees, and how high")
    .argument("<CAMP>", "the camp file")
    .option("--json", "print the plan file alone")
    .option("--out <DIR>", "write plan, map and cards into this folder")
    .option("--force", "write over files that are there")
    .option("--why", "tell also how the answer was found, and every assumption")
    .option("--from <PLAN>", "mend this saved plan with the fewest people moved, instead of planning anew")
    .option("--log <LOG>", "learn from this log of nights how warm each sleeper lies")
    .action(async (camp: string, options: PlanOptions) => {
      const { planCommand } = await import("./commands/plan.ts");
      session.end(await planCommand(camp, options, session.io));
    });
}

function addBerth(program: Command, session: Session): void {
  program
    .command("berth")
    .description("two trees, tonight: one sleeper, a sentence for each tree")
    .option("--span <LENGTH>", "between the middles of the two trunks, such as 4.5 or 14ft")
    .option(
      "--steps <COUNT>",
      "the same in your own steps, from beside the middle of one trunk to beside the other",
    )
    .option("--step <LENGTH>", "one of your steps; without it, from your stature")
    .option("--stature <LENGTH>", "how tall you are, such as 1.75 or 5ft9in")
    .option("--mass <MASS>", "your mass, such as 80 or 175lb")
    .option("--fall <LENGTH>", "how much lower the ground is at the second tree")
    .option("--trunk <LENGTH>", "the thinner trunk's diameter, such as 0.3")
    .option("--hammock <LENGTH>", "the hammock's length")
    .option("--ridgeline <LENGTH>", "the structural ridgeline's length")
    .option("--sling <SHORTEST>", "you use whoopie slings; their shortest length")
    .option("--table", "print a table to carry instead: a line for each half step, marks on your own body")
    .option("--json", "print the plan file alone")
    .action(async (options: BerthOptions) => {
      const { berthCommand } = await import("./commands/berth.ts");
      session.end(await berthCommand(options, session.io));
    });
}

function addAdjust(program: Command, session: Session): void {
  program
    .command("adjust")
    .description("on the spot: what was found where it hangs, against the plan; one thing to change")
    .argument("<PLAN>", "the saved plan, plan.json")
    .requiredOption("--berth <ID>", "which berth")
    .option("--measured <FILE>", "what was found: JSON, any of span, heights, angles, seat, feelings")
    .option("--symptom <NAME>", "what people tell, such as calf-ridge or slides-to-foot")
    .option("--json", "answer in JSON")
    .action(async (plan: string, options: AdjustOptions) => {
      const { adjustCommand } = await import("./commands/adjust.ts");
      session.end(adjustCommand(plan, options, session.io));
    });
}

function addLog(program: Command, session: Session): void {
  program
    .command("log")
    .description(
      "write down how a night was, for the next plan to learn from; with --camp tell what is learnt",
    )
    .argument("<LOG>", "the log file; made where it is not there")
    .option("--plan <PLAN>", "the saved plan of that night, plan.json")
    .option("--date <DATE>", "the day of the night, such as 2027-05-14")
    .option("--answers <FILE>", "what people told: a JSON list, one answer a sleeper")
    .option("--sleeper <ID>", "whose answer it is, where it is one alone")
    .option("--under <WORD>", "how it was below: cold, cool, right or warm")
    .option("--over <WORD>", "how it was above: cold, cool, right or warm")
    .option("--woke <TIME>", "when cold woke the sleeper, such as 03:30")
    .option(
      "--trouble <WORDS>",
      "wet, slid, noise, light, insects, cramped, wind, other; with commas between",
    )
    .option("--leave-out", "no night like others: keep it, and learn nothing from it")
    .option("--note <TEXT>", "a note")
    .option("--measured-low <C>", "the lowest a thermometer at the hammocks said, in °C")
    .option("--camp <CAMP>", "tell what is learnt about the sleepers of this camp")
    .option("--why", "tell it in kelvins too")
    .action(async (log: string, options: LogOptions) => {
      const { logCommand } = await import("./commands/log.ts");
      session.end(logCommand(log, options, session.io));
    });
}

function addCheck(program: Command, session: Session): void {
  program
    .command("check")
    .description("read and judge a camp file, and do nothing else")
    .argument("<CAMP>", "the camp file")
    .option("--json", "answer in JSON")
    .action(async (camp: string, options: { readonly json?: boolean }) => {
      const { checkCommand } = await import("./commands/check.ts");
      session.end(checkCommand(camp, options, session.io));
    });
}

function addImport(program: Command, session: Session): void {
  program
    .command("import")
    .description(
      "put trees, a forecast, kit or inspections from a list into a camp file, in place of what is there; inspections are added to their logs",
    )
    .argument("<FILE>", "the list: CSV, GeoJSON, GPX, CoverageJSON or JSON; or the address of a forecast")
    .requiredOption("--into <CAMP>", "the camp file; its last state goes to CAMP.before")
    .option("--skip-bad", "leave out rows that cannot be used")
    .option("--mapping <FILE>", "where in any other JSON a forecast stands")
    .action(async (file: string, options: ImportOptions) => {
      const { importCommand } = await import("./commands/import.ts");
      session.end(await importCommand(file, options, session.io));
    });
}

function addExport(program: Command, session: Session): void {
  program
    .command("export")
    .description("print one list of a camp as CSV: trees, kit, inspections or forecast")
    .argument("<CAMP>", "the camp file")
    .argument("<LIST>", "trees, kit, inspections or forecast")
    .action(async (camp: string, list: string) => {
      const { exportCommand } = await import("./commands/export.ts");
      session.end(exportCommand(camp, list, session.io));
    });
}

function addModel(program: Command, session: Session): void {
  program
    .command("model")
    .description("one model alone: JSON in on standard input, JSON out; without a name, the list of models")
    .argument("[NAME]", "the model")
    .option("--json", "print the list of models as JSON")
    .action(async (name: string | undefined, options: { readonly json?: boolean }) => {
      const { modelCommand } = await import("./commands/model.ts");
      session.end(await modelCommand(name, options, session.io));
    });
}

function addSchema(program: Command, session: Session): void {
  program
    .command("schema")
    .description("the JSON Schemas of the camp file, the plan file and the log file")
    .argument("[NAME]", "camp, plan or log; all by name without it")
    .action(async (name: string | undefined) => {
      const { schemaCommand } = await import("./commands/schema.ts");
      session.end(schemaCommand(name, session.io));
    });
}

function oneLine(message: string): string {
  return message
    .replace(/^error: /, "")
    .trim()
    .replaceAll(/\s*\n\s*/g, " ");
}
