import { expect, it } from "vitest";
import { exampleCamp } from "../examples.fixture.ts";
import { importTrees } from "./tree-list.ts";

it("puts new trees in place of the old ones and leaves all else as it was", () => {
  const { document } = exampleCamp("demo");
  const before = JSON.stringify(document);
  const rows = [{ id: "1", x_m: 0, y_m: 0, dbh_cm: 30 }];
  const changed = importTrees({ ...document, ...{ leaf: "kept" } }, { rows });
  expect(changed).toEqual({ ...document, leaf: "kept", ground: { ...document.ground, trees: rows } });
  expect(JSON.stringify(document)).toBe(before);
});
