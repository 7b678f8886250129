import { CAMP_FORMAT, openCamp, type CampDocument } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import {
  LEAST_PLACES,
  OBSTACLES,
  placeFrom,
  SPOTS,
  withDrawn,
  withoutTree,
  withTreeAt,
} from "./draw-ground.ts";

const tree = { girthCm: 94, species: "Quercus robur", condition: "doubtful" } as const;

function openedOf(document: unknown): CampDocument {
  const outcome = openCamp(document);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusals));
  return outcome.value.document;
}

function begun(): CampDocument {
  return openedOf({
    format: CAMP_FORMAT,
    name: "A wood",
    sleepers: [{ id: "s1", name: "Ada", stature_m: 1.7 }],
    own_note: { kept: [1, 2] },
  });
}

describe("drawing on the ground", () => {
  it("adds a tree as it was measured, and keeps what it does not know", () => {
    const after = openedOf(withDrawn(begun(), "tree", [[3.004, 4]], { tree }));
    expect(after.ground?.trees?.at(-1)).toEqual({
      id: "T1",
      x_m: 3,
      y_m: 4,
      girth_cm: 94,
      species: "Quercus robur",
      condition: "doubtful",
    });
    expect(after).toMatchObject({ own_note: { kept: [1, 2] } });
  });

  it("moves and takes away that tree alone", () => {
    const two = [1, 9].reduce((camp, x) => openedOf(withDrawn(camp, "tree", [[x, 0]], { tree })), begun());
    const moved = openedOf(withTreeAt(two, "T2", [5, 6]));
    expect(moved.ground?.trees?.map(({ x_m, y_m }) => [x_m, y_m])).toEqual([
      [1, 0],
      [5, 6],
    ]);
    expect(openedOf(withoutTree(moved, "T1")).ground?.trees?.map(({ id }) => id)).toEqual(["T2"]);
  });

  it.each([...OBSTACLES, ...SPOTS])("draws a file that opens: %s", (what) => {
    const corners = [
      [0, 0],
      [4, 0],
      [4, 3],
    ] as const;
    const after = openedOf(
      withDrawn(begun(), what, corners.slice(0, LEAST_PLACES[what]), { tree, reachM: 7 }),
    );
    const drawn = after.ground?.obstacles?.[0];
    if (drawn === undefined) expect(JSON.stringify(after.ground)).toContain(`"${what}":{"x_m":0,"y_m":0}`);
    else expect(drawn).toMatchObject({ kind: what, setback_m: 7 });
  });

  it("goes by bearing: north is up, east to the right", () => {
    expect(placeFrom([1, 2], 10, 0)).toEqual([1, 12]);
    expect(placeFrom([1, 2], 10, 90)).toEqual([11, 2]);
  });
});
