import { describe, expect, it } from "vitest";
import { linkFaults } from "./links.mjs";

const FILES: Readonly<Record<string, string>> = {
  "README.md": "# Top\n\n## Two trees, tonight\n\n## Two trees, tonight\n",
  "handbook/a.png": "",
};
const read = (path: string) => FILES[path];
const faultsOf = (text: string) => linkFaults({ path: "handbook/page.md", text }, read);

describe("links of pages", () => {
  it.each([
    "[up](../README.md)",
    "[heading](../README.md#two-trees-tonight)",
    "[second of a name](../README.md#two-trees-tonight-1)",
    "![picture](a.png)",
    "[elsewhere](https://example.org/absent)",
    "# Here\n\n[here](#here)",
    "`[code](absent.md)`",
    "```\n[code](absent.md)\n```",
    "[ref]: ../README.md",
  ])("lets %j be", (text) => {
    expect(faultsOf(text)).toEqual([]);
  });

  it.each([
    "[gone](absent.md)",
    "![gone](absent.png)",
    "[gone](../README.md#absent)",
    "[gone](#absent)",
    "[ref]: absent.md",
    '<img src="absent.svg">',
  ])("finds %j", (text) => {
    expect(faultsOf(text)).toHaveLength(1);
  });
});
