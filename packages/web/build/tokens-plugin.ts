import { join } from "node:path";
import { runnerImport, type Plugin } from "vite";

const NAME = "/style/tokens.css";
const MADE = "\0nightspan-tokens.css";
const ENTRY = join(import.meta.dirname, "../../drawing/src/index.ts");

interface Drawing {
  readonly tokensCss: () => string;
  readonly THEMES: Readonly<Record<"one-ink", Readonly<Record<string, string>>>>;
}

/** Gives the drawing's colour tokens as a stylesheet, so that screen and drawings share one table. */
export function tokensPlugin(): Plugin {
  return {
    name: "nightspan-tokens",
    enforce: "pre",
    resolveId: (id) => (id.endsWith(NAME) ? MADE : undefined),
    async load(id) {
      if (id !== MADE) return undefined;
      const { module } = await runnerImport<Drawing>(ENTRY, {
        configFile: false,
        environments: {
          inline: { resolve: { conditions: ["camp-source"], noExternal: [/^@nightspan\//] } },
        },
      });
      return module.tokensCss() + oneInkCss(module.THEMES["one-ink"]);
    },
  };
}

/** Papers are one ink on white; only red by night shows them in its own colours, until they are printed. */
function oneInkCss(theme: Readonly<Record<string, string>>): string {
  const variables = Object.entries(theme)
    .map(([token, colour]) => `  --ns-${token}: ${colour};\n`)
    .join("");
  return [
    `:root:not([data-theme="red-night"]) .one-ink {\n${variables}}\n`,
    `@media print {\n:root .one-ink {\n${variables}}\n}\n`,
  ].join("");
}
