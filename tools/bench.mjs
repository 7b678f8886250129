import { filesBelow } from "./source-files.mjs";
import { runSource } from "./run.mjs";

/** Runs each benchmark in a process of its own; words after the command choose by path. */
const wanted = process.argv.slice(2);
const files = filesBelow("packages")
  .filter((path) => /^packages\/[^/]+\/bench\/.*\.bench\.ts$/.test(path))
  .filter((path) => wanted.every((word) => path.includes(word)));

if (files.length === 0) {
  console.error(`No benchmark matches ${wanted.join(" ") || "packages/*/bench/*.bench.ts"}.`);
  process.exitCode = 1;
}
for (const file of files) {
  console.log(`\n${file}`);
  const code = runSource([file]);
  if (code !== 0) process.exitCode = code;
}
