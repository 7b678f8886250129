import { defineConfig } from "vitest/config";

const SOURCE = {
  resolve: { conditions: ["camp-source"] },
  ssr: { resolve: { conditions: ["camp-source"] } },
  oxc: { jsx: { runtime: "automatic" as const, importSource: "preact" } },
};

export default defineConfig({
  test: {
    reporters: [["default", { summary: false }], "./tools/closing-line-reporter.mjs"],
    coverage: { provider: "v8", include: ["packages/*/src/**"], exclude: ["**/*.test.*", "**/*.fixture.*"] },
    projects: [
      {
        ...SOURCE,
        test: {
          name: "unit",
          include: ["packages/*/src/**/*.test.{ts,tsx}", "tools/**/*.test.ts", "checks/**/*.test.ts"],
          testTimeout: 20_000,
        },
      },
      {
        ...SOURCE,
        test: {
          name: "e2e",
          include: ["packages/web/e2e/**/*.e2e.ts"],
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
