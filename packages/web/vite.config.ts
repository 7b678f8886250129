import { defineConfig } from "vite";
import { examplePlugin } from "./build/example-plugin.ts";
import { precachePlugin } from "./build/precache-plugin.ts";
import { tokensPlugin } from "./build/tokens-plugin.ts";

/** Source conditions first: the packages are read from source, without a build of their own. */
const CONDITIONS = ["camp-source", "module", "browser", "development|production"];

export default defineConfig({
  root: import.meta.dirname,
  base: "./",
  resolve: { conditions: CONDITIONS },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  optimizeDeps: { exclude: ["highs"] },
  worker: { format: "es" },
  build: {
    target: "es2022",
    // The page's policy allows fonts and pictures from its own place only, never from data addresses.
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 4000,
  },
  plugins: [tokensPlugin(), examplePlugin(), precachePlugin()],
});
