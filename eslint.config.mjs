import js from "@eslint/js";
import { defineConfig, globalIgnores } from "eslint/config";
import ts from "typescript-eslint";

const TYPED = ["**/*.{ts,tsx}"];
const NODE = {
  process: "readonly",
  console: "readonly",
  URL: "readonly",
  fetch: "readonly",
  setTimeout: "readonly",
  clearTimeout: "readonly",
  Buffer: "readonly",
};

const NAMED_EXPORTS = {
  selector: "ExportDefaultDeclaration",
  message: "Named exports only.",
};
const DOUBLE_CAST = {
  selector: "TSAsExpression > TSAsExpression[typeAnnotation.type='TSUnknownKeyword']",
  message: "No cast through unknown: narrow the value instead.",
};
const CAST = {
  selector: "TSAsExpression:not([typeAnnotation.typeName.name='const'])",
  message: "No casts in core; makers of brands live in quantity/.",
};
const AMBIENT = [
  "Date",
  "performance",
  "crypto",
  "fetch",
  "process",
  "window",
  "document",
  "navigator",
  "localStorage",
  "setTimeout",
  "setInterval",
].map((name) => ({ name, message: "The caller hands in dates, seeds and weather; core has none." }));

/** Lint rules: the typed strict set everywhere, and a core without clock, chance or surroundings. */
export default defineConfig(
  globalIgnores(["**/dist/**", "**/dist-types/**", "**/out/**", "**/coverage/**", "**/node_modules/**"]),
  js.configs.recommended,
  {
    files: ["**/*.mjs"],
    languageOptions: { globals: NODE },
  },
  {
    linterOptions: { noInlineConfig: true, reportUnusedDisableDirectives: "error" },
    rules: {
      eqeqeq: "error",
      "no-console": "off",
      "prefer-const": "error",
      "no-restricted-syntax": ["error", NAMED_EXPORTS, DOUBLE_CAST],
    },
  },
  {
    files: TYPED,
    extends: [ts.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      "@typescript-eslint/consistent-type-imports": "error",
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-non-null-assertion": "error",
      "@typescript-eslint/ban-ts-comment": [
        "error",
        { "ts-expect-error": true, minimumDescriptionLength: 1000 },
      ],
      "@typescript-eslint/restrict-template-expressions": [
        "error",
        { allowNumber: true, allowBoolean: true },
      ],
      "@typescript-eslint/switch-exhaustiveness-check": [
        "error",
        { considerDefaultExhaustiveForUnions: true },
      ],
      "@typescript-eslint/no-confusing-void-expression": ["error", { ignoreArrowShorthand: true }],
    },
  },
  {
    files: ["packages/{core,drawing}/src/**/*.ts"],
    ignores: ["**/*.test.ts", "**/*.fixture.ts"],
    rules: {
      "no-restricted-globals": ["error", ...AMBIENT],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "Chance is an argument: take a seed." },
      ],
    },
  },
  {
    files: ["packages/core/src/**/*.ts"],
    ignores: ["**/*.test.ts", "**/*.fixture.ts", "packages/core/src/quantity/**"],
    rules: { "no-restricted-syntax": ["error", NAMED_EXPORTS, DOUBLE_CAST, CAST] },
  },
  {
    files: ["packages/{core,drawing,edge}/src/**/*.ts"],
    ignores: ["**/*.test.ts", "**/*.fixture.ts"],
    rules: {
      "no-restricted-imports": [
        "error",
        { patterns: [{ regex: "^node:", message: "Runs in the browser too: no Node modules here." }] },
      ],
    },
  },
  {
    // The author of a check row says what its `given` holds; a wrong word there fails the row.
    files: ["checks/run-checks.ts"],
    rules: { "@typescript-eslint/no-unnecessary-type-parameters": "off" },
  },
  {
    files: ["*.config.{ts,mjs}", "packages/*/*.config.ts", "tools/*-reporter.mjs"],
    rules: { "no-restricted-syntax": "off" },
  },
);
