import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

const NAME = "virtual:nightspan-example";
const FILE = join(import.meta.dirname, "../../../examples/demo.camp.json");

/** Gives the demo camp of `examples/` as text, so that the app and the command line show one example. */
export function examplePlugin(): Plugin {
  return {
    name: "nightspan-example",
    resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
    load(id) {
      if (id !== `\0${NAME}`) return undefined;
      this.addWatchFile(FILE);
      return `export const exampleCamp = ${JSON.stringify(readFileSync(FILE, "utf8"))};`;
    },
  };
}
