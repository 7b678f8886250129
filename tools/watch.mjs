import { commandOf, runNode } from "./run.mjs";

/** Runs one room's tests on each save: `npm run watch -- statics`. */
process.exitCode = runNode([commandOf("vitest"), "watch", "--project", "unit", ...process.argv.slice(2)]);
