import { existsSync, renameSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "./source-files.mjs";

const FOLDER = join("packages", "drawing", "golden");

/** Accepts one changed drawing after a person has looked at it: `npm run golden -- NAME`. */
function main() {
  const name = process.argv[2] ?? "";
  if (!/^[\w-]+$/.test(name)) return fail("Say which drawing: npm run golden -- NAME");
  const changed = join(ROOT, FOLDER, `${name}-changed.svg`);
  if (!existsSync(changed))
    return fail(`${join(FOLDER, `${name}-changed.svg`)} is not there: nothing differs.`);
  renameSync(changed, join(ROOT, FOLDER, `${name}.svg`));
  console.log(`accepted ${join(FOLDER, `${name}.svg`)}`);
}

/** @param {string} sentence */
function fail(sentence) {
  console.error(sentence);
  process.exitCode = 1;
}

main();
