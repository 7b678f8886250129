import { describe, expect, it } from "vitest";
import { cycleFaults, layerFaults, undeclaredFaults } from "./layers.mjs";
import { sizeReport } from "./sizes.mjs";

const file = (path: string, text: string) => ({ path: `packages/${path}`, text });
const faultsOf = (path: string, text: string) => layerFaults([file(path, text)]);

describe("rooms of core", () => {
  it.each([
    ["core/src/statics/hang.ts", 'import { force } from "../quantity/force.ts";'],
    ["core/src/planning/layout.ts", 'import type { Plan } from "../plan/plan.ts";'],
    ["core/src/plan/plan.ts", 'import type { Hang } from "../statics/hang.ts";'],
    ["core/src/statics/hang.ts", 'import { level } from "./level.ts";'],
    ["core/src/index.ts", 'export * from "./planning/layout.ts";'],
  ])("%s may say %s", (path, text) => {
    expect(faultsOf(path, text)).toEqual([]);
  });

  it.each([
    ["upwards", "core/src/quantity/force.ts", 'import { hang } from "../statics/hang.ts";'],
    ["sideways between trades", "core/src/statics/hang.ts", 'import { gust } from "../shelter/gust.ts";'],
    ["sideways on the ground", "core/src/numeric/root.ts", 'import { force } from "../quantity/force.ts";'],
    ["a type only", "core/src/plan/plan.ts", 'import type { Layout } from "../planning/layout.ts";'],
    ["a type inside an import of values", "core/src/heat/a.ts", 'import { type B } from "../site/b.ts";'],
    ["an import written as a type", "core/src/heat/a.ts", 'type B = import("../site/b.ts").B;'],
    ["a re-export", "core/src/geometry/a.ts", 'export { b } from "../site/b.ts";'],
    ["the entry", "core/src/site/a.ts", 'import { b } from "../index.ts";'],
    ["a test that reaches up", "core/src/site/a.test.ts", 'import { b } from "../planning/b.ts";'],
    ["a room not on the map", "core/src/attic/a.ts", 'import { b } from "../site/b.ts";'],
    ["an outside package", "core/src/site/a.ts", 'import flatbush from "flatbush";'],
    ["Node", "core/src/site/a.ts", 'import { readFileSync } from "node:fs";'],
    ["itself by name", "core/src/site/a.ts", 'import { b } from "@nightspan/core";'],
  ])("finds %s", (_what, path, text) => {
    expect(faultsOf(path, text)).toHaveLength(1);
  });
});

describe("packages", () => {
  it.each([
    ["edge/src/a.ts", 'import { b } from "@nightspan/core"; import * as z from "zod/mini";'],
    ["cli/src/a.ts", 'import { b } from "@nightspan/edge"; import { join } from "node:path";'],
    ["web/src/client/a.tsx", 'import { b } from "../shared/b.ts"; import { h } from "preact";'],
    ["core/src/site/a.test.ts", 'import { it } from "vitest"; import { checks } from "@nightspan/checks";'],
    ["web/e2e/a.e2e.ts", 'import { serve } from "../../../tools/serve.mjs";'],
    ["drawing/golden/a.ts", 'import { b } from "../src/b.ts"; import { c } from "@nightspan/drawing";'],
  ])("%s may say %s", (path, text) => {
    expect(faultsOf(path, text)).toEqual([]);
  });

  it.each([
    ["upwards", "core/src/site/a.ts", 'import { b } from "@nightspan/edge";'],
    ["upwards in a test", "drawing/src/a.test.ts", 'import { b } from "@nightspan/edge";'],
    ["past the entry", "cli/src/a.ts", 'import { b } from "@nightspan/core/src/site/b.ts";'],
    ["by a path", "cli/src/a.ts", 'import { b } from "../../core/src/site/b.ts";'],
    ["page to worker", "web/src/client/a.ts", 'import type { B } from "../worker/b.ts";'],
    ["worker to page", "web/src/worker/a.ts", 'import { b } from "../client/b.ts";'],
    ["shared to page", "web/src/shared/a.ts", 'import { b } from "../client/b.ts";'],
    ["Node in the browser", "edge/src/a.ts", 'import { join } from "node:path";'],
    ["drawing from outside", "drawing/src/a.ts", 'import { h } from "preact";'],
    ["checks outside tests", "core/src/site/a.ts", 'import { checks } from "@nightspan/checks";'],
    ["a package not on the map", "extra/src/a.ts", 'import { b } from "@nightspan/core";'],
  ])("finds %s", (_what, path, text) => {
    expect(faultsOf(path, text)).toHaveLength(1);
  });
});

describe("outside packages", () => {
  const undeclared = (path: string, text: string) =>
    undeclaredFaults([file(path, text)], (pack) => (pack === "edge" ? ["zod", "@scope/one"] : []));

  it.each([
    ["edge/src/a.ts", 'import * as z from "zod/mini"; import one from "@scope/one/part.js";'],
    ["cli/src/a.ts", 'import { join } from "node:path"; import { b } from "./b.ts";'],
    ["edge/src/a.test.ts", 'import { it } from "vitest";'],
  ])("%s may say %s", (path, text) => {
    expect(undeclared(path, text)).toEqual([]);
  });

  it.each([
    ["one that only a neighbour names", "web/src/client/a.ts", 'import * as z from "zod/mini";'],
    ["another of a scope", "edge/src/a.ts", 'import two from "@scope/two";'],
    ["one of our own", "edge/src/a.ts", 'import { b } from "@nightspan/core";'],
  ])("finds %s", (_what, path, text) => {
    expect(undeclared(path, text)).toHaveLength(1);
  });
});

describe("cycles", () => {
  it("finds a ring of three files, a type import in it", () => {
    const ring = [
      file("core/src/site/a.ts", 'import { b } from "./b.ts";'),
      file("core/src/site/b.ts", 'import type { C } from "./c.ts";'),
      file("core/src/site/c.ts", 'export { a } from "./a.ts";'),
      file("core/src/site/d.ts", 'import { a } from "./a.ts";'),
    ];
    expect(cycleFaults(ring)).toEqual([
      "import cycle: packages/core/src/site/a.ts → packages/core/src/site/b.ts → packages/core/src/site/c.ts → packages/core/src/site/a.ts",
    ]);
    expect(cycleFaults(ring.slice(1))).toEqual([]);
  });

  it("finds a file that imports itself", () => {
    expect(cycleFaults([file("core/src/site/a.ts", 'import { a } from "./a.ts";')])).toHaveLength(1);
  });
});

describe("sizes", () => {
  const long = "export const a = 1;\n".repeat(401);

  it("finds a file over 400 lines, and lets it be with its reason near the top", () => {
    expect(sizeReport([file("core/src/a.ts", long)]).tooLong).toHaveLength(1);
    expect(sizeReport([file("core/src/a.ts", `// Long because: a table.\n${long}`)]).tooLong).toEqual([]);
    expect(sizeReport([file("core/src/a.ts", `${long}// Long because: too late.\n`)]).tooLong).toHaveLength(
      1,
    );
    expect(sizeReport([file("core/src/a.ts", "export const a = 1;\n".repeat(400))]).tooLong).toEqual([]);
  });

  it("names a function over 60 lines", () => {
    const body = "  count();\n".repeat(60);
    const { lines } = sizeReport([file("core/src/a.ts", `export function a() {\n${body}}\n`)]);
    expect(lines.at(-1)).toContain("packages/core/src/a.ts:1, 62 lines");
  });
});
