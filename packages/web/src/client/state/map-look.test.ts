import { beforeEach, describe, expect, it } from "vitest";
import { pick, picked, pickOf } from "./map-look.ts";

describe("a press on the map", () => {
  beforeEach(() => {
    picked.value = undefined;
  });

  it("picks the one thing under it, also where its id has a slash", () => {
    pick(["berth/3"]);
    expect(picked.value).toEqual({ kind: "berth", id: "3" });
    expect(pickOf("tree/K/12")).toEqual({ kind: "tree", id: "K/12" });
  });

  it("gives a list where several lie under it", () => {
    pick(["tree/K12", "berth/7", "tree/K12"]);
    expect(picked.value).toEqual({ kind: "several", refs: ["tree/K12", "berth/7"] });
  });

  it("opens a merged plate into its berths", () => {
    pick(["berths/7+8"]);
    expect(picked.value).toEqual({ kind: "several", refs: ["berth/7", "berth/8"] });
  });

  it("lets go where nothing that can be picked lies under it", () => {
    pick(["berth/3"]);
    pick(["obstacle/fire"]);
    expect(picked.value).toBeUndefined();
  });
});
