import { commandOf, runNode } from "./run.mjs";
import { filesBelow, readSource } from "./source-files.mjs";

/** Prints the error of each check row beside its tolerance; words after the command choose by path. */
const wanted = process.argv.slice(2);
const tests = filesBelow("packages")
  .filter((path) => path.endsWith(".test.ts") && readSource(path).text.includes("@nightspan/checks"))
  .filter((path) => wanted.every((word) => path.includes(word)));

process.exitCode =
  tests.length === 0
    ? 1
    : runNode([
        commandOf("vitest"),
        "run",
        "--project=unit",
        "--testNamePattern=checks of ",
        "--reporter=./tools/check-rows-reporter.mjs",
        ...tests,
      ]);
if (tests.length === 0) console.error(`No check rows match ${wanted.join(" ")}.`);
