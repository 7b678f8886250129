import type { Refusal } from "@nightspan/core";
import { signal } from "@preact/signals";
import { editCamp } from "../state/camp-store.ts";
import {
  LEAST_PLACES,
  withDrawn,
  withoutObstacle,
  withoutTree,
  withTreeAt,
  type Drawn,
  type NewTree,
  type Place,
} from "../state/draw-ground.ts";
import { readNumber } from "../ui/read-number.ts";

/** What the next press on the ground draws; nothing where it only looks. */
export const drawing = signal<Drawn | undefined>(undefined);
/** The places pressed of a way or an outline under way. */
export const places = signal<readonly Place[]>([]);
/** What was picked on the ground: "tree/T1", "obstacle/fire1". */
export const chosen = signal<string | undefined>(undefined);
/** Whether the next press says where the picked tree stands. */
export const moving = signal(false);
/** What stood against the last thing drawn. */
export const drawRefusals = signal<readonly Refusal[]>([]);

/** As typed, for the next thing drawn. */
export const typed = signal({ girth: "94", species: "", condition: "", reach: "" });

export function begin(what: Drawn | undefined): void {
  drawing.value = what;
  places.value = [];
  chosen.value = undefined;
  moving.value = false;
  drawRefusals.value = [];
}

/** A press on the ground: a place of what is drawn, a new place of what is moved, or something to pick. */
export function pressGround(refs: readonly string[], at: Place): void {
  if (moving.peek()) {
    moveTo(at);
    return;
  }
  const what = drawing.peek();
  if (what === undefined) {
    chosen.value = refs.find((ref) => ref.startsWith("tree/") || ref.startsWith("obstacle/"));
    return;
  }
  places.value = [...places.peek(), at];
  if (LEAST_PLACES[what] === 1) finish();
}

/** Draws what was pressed, where it is whole. */
export function finish(): void {
  const what = drawing.peek();
  if (what === undefined || places.peek().length < LEAST_PLACES[what]) return;
  const drawn = places.peek();
  const reachM = readNumber(typed.peek().reach);
  const more = { tree: newTree(), ...(reachM === undefined ? {} : { reachM }) };
  drawRefusals.value = editCamp("", (document) => withDrawn(document, what, drawn, more));
  places.value = [];
}

export function moveTo(at: Place): void {
  const id = idOf(chosen.peek(), "tree/");
  if (id === undefined) return;
  drawRefusals.value = editCamp("", (document) => withTreeAt(document, id, at));
  moving.value = false;
}

export function takeOut(ref: string): void {
  const tree = idOf(ref, "tree/");
  const obstacle = idOf(ref, "obstacle/");
  drawRefusals.value = editCamp("", (document) => {
    if (tree !== undefined) return withoutTree(document, tree);
    return obstacle === undefined ? document : withoutObstacle(document, obstacle);
  });
  if (drawRefusals.peek().length === 0) chosen.value = undefined;
}

export function idOf(ref: string | undefined, kind: "tree/" | "obstacle/"): string | undefined {
  return ref?.startsWith(kind) === true ? ref.slice(kind.length) : undefined;
}

/** A girth that cannot be read goes to the file's own check, which refuses it in words. */
function newTree(): NewTree {
  const { girth, species, condition } = typed.peek();
  const name = species.trim();
  const seen = (["healthy", "doubtful", "dead"] as const).find((one) => one === condition);
  return {
    girthCm: readNumber(girth),
    ...(name === "" ? {} : { species: name }),
    ...(seen === undefined ? {} : { condition: seen }),
  };
}
