import { join } from "node:path";
import type { Plugin } from "vite";

const NAME = "demo.camp.json?raw";
const FILE = join(import.meta.dirname, "../../../examples/demo.camp.json");

/** Takes the app's demo camp from `examples/`, so that the app and the command line show one example. */
export function examplePlugin(): Plugin {
  return {
    name: "nightspan-example",
    enforce: "pre",
    resolveId: (id) => (id.endsWith(`/${NAME}`) ? `${FILE}?raw` : undefined),
  };
}
