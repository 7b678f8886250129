import type { CutPattern, CutPiece, MaterialCuts, Plan } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { listed } from "../card/card-words.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, PathStep, Scene } from "../scene/scene.ts";
import { box, group, path, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";

export interface StoreOptions {
  readonly words: Words;
  readonly widthPx: number;
}

const EDGE = 16;
/** Tall enough for a length written upward. */
const BAR = 47;

/**
 * Each spool as a bar with its pieces end to end in the order of cutting, their lengths in them and knots and tails as
 * dark ends; what is left is hatched. One scale for each material.
 */
export function cutListScene(plan: Plan, { words, widthPx }: StoreOptions): Scene {
  const materials = plan.cuts?.materials ?? [];
  let y = 8;
  const items = materials.flatMap((cuts) => {
    const drawn = material(cuts, y, widthPx, words);
    y = drawn.bottom + 18;
    return drawn.items;
  });
  if (materials.length > 0) {
    const style = { size: TYPE.note, weight: 600, width: widthPx - 2 * EDGE, leading: 20 } as const;
    const legend = wrapped(word("cuts.order"), [EDGE, y + 8], style, words);
    items.push(...legend.items);
    y = legend.bottom + 18;
  } else items.push(text(word("cuts.none"), [EDGE, 28], { size: TYPE.body }));
  return {
    name: "cut-list",
    size: { width: widthPx, height: Math.max(48, Math.ceil(y)), unit: "px" },
    title: word("cuts.title", { camp: name(plan.campName) }),
    desc: word(materials.length === 0 ? "cuts.none" : "cuts.desc"),
    ground: "paper",
    items,
  };
}

interface Drawn {
  readonly items: readonly Item[];
  readonly bottom: number;
}

/** Name of a material, webbing with its width. */
export function materialText({
  material: kind,
  widthM,
}: Pick<MaterialCuts, "material" | "widthM">): TextItem {
  if (kind !== "webbing" || widthM === undefined) return word(`cuts.${kind}`);
  return word("cuts.webbing-wide", { width: quantity("width", widthM, 0) });
}

function material(cuts: MaterialCuts, top: number, widthPx: number, words: Words): Drawn {
  const longest = Math.max(0.1, ...cuts.patterns.map(({ stockM }) => stockM));
  const pxPerM = (widthPx - 2 * EDGE) / longest;
  const head = text(materialText(cuts), [EDGE, top + 18], { size: TYPE.lead, weight: 700 });
  let y = top + 30;
  const bars = cuts.patterns.flatMap((pattern) => {
    const drawn = bar(pattern, cuts.pieces, { top: y, pxPerM, widthPx }, words);
    y = drawn.bottom + 14;
    return drawn.items;
  });
  const style = { size: TYPE.note, fill: "soft", width: widthPx - 2 * EDGE, leading: 20 } as const;
  const foot = wrapped(provenText(cuts), [EDGE, y + 6], style, words);
  return { items: [head, ...bars, ...foot.items], bottom: foot.bottom + 2 };
}

/** Whether any other way could be better, and by how much in what counts first. */
function provenText({ proven, patterns, boughtM, leastBoughtM, leastSpools }: MaterialCuts): TextItem {
  if (proven) return word("cuts.proven");
  const spools = patterns.reduce((sum, { times }) => sum + times, 0);
  if (leastBoughtM < boughtM)
    return word("cuts.bound-bought", {
      bought: quantity("length", boughtM, 0),
      least: quantity("length", leastBoughtM, 0),
    });
  if (leastSpools === spools) return word("cuts.bound-length");
  return word("cuts.bound-spools", {
    spools: quantity("count", spools, 0),
    fewest: quantity("count", leastSpools, 0),
  });
}

interface BarPlace {
  readonly top: number;
  readonly pxPerM: number;
  readonly widthPx: number;
}

function bar(pattern: CutPattern, made: readonly CutPiece[], place: BarPlace, words: Words): Drawn {
  const { stockM, cuts, restM } = pattern;
  const { top, pxPerM, widthPx } = place;
  let x = EDGE;
  const pieces = cuts.flatMap(({ lengthM, count }) => {
    const tailM = tailOf(lengthM, made);
    const from = x;
    const run = Array.from({ length: count }, () => {
      const drawn = piece({ x, top, width: lengthM * pxPerM, tail: tailM * pxPerM, lengthM }, words);
      x += lengthM * pxPerM;
      return drawn;
    });
    const narrow = lengthM * pxPerM <= NARROW;
    return narrow ? [...run, ...runLabel({ from, to: x, top }, { lengthM, count }, words)] : run;
  });
  const right = EDGE + stockM * pxPerM;
  const rest = restM > 0 ? leftOver(x, right, top) : [];
  const outline = box([EDGE, top], right - EDGE, BAR, {
    fill: "none",
    stroke: "ink",
    width: 1.5,
    join: "miter",
  });
  const style = { size: TYPE.note, weight: 500, width: widthPx - 2 * EDGE, leading: 20 } as const;
  const set = wrapped(patternText(pattern), [EDGE, top + BAR + 19], style, words);
  return {
    items: [group([...rest, ...pieces, outline], { class: "ns-spool" }), ...set.items],
    bottom: set.bottom + 4,
  };
}

/** Half of what knots and tails take up, where every piece of this length has as much; else nothing is told. */
function tailOf(lengthM: number, made: readonly CutPiece[]): number {
  const tails = made
    .filter((one) => Math.abs(one.lengthM - lengthM) < 0.001)
    .map(({ allowanceM }) => allowanceM / 2);
  const [first = 0] = tails;
  return tails.every((tail) => Math.abs(tail - first) < 0.001) ? first : 0;
}

interface PiecePlace {
  readonly x: number;
  readonly top: number;
  readonly width: number;
  readonly tail: number;
  readonly lengthM: number;
}

/** One piece: its length written upward where it is broad enough, and its ends that go into knots. */
function piece({ x, top, width, tail, lengthM }: PiecePlace, words: Words): Item {
  const number = quantity("length", lengthM, 2, "number");
  const size = TYPE.note;
  const half = words.measure(words.labels(number), size, 600) / 2;
  const label = group([text(number, [-half, size * 0.36], { size, weight: 600 })], {
    move: [x + width / 2, top + (BAR - TAIL) / 2],
    turnRad: -Math.PI / 2,
  });
  const ends = [x, x + width - tail].map((left) =>
    box([left, top + BAR - TAIL], tail, TAIL, { fill: "ink" }),
  );
  return group([
    box([x, top], width, BAR, { fill: "cloth-tint", stroke: "cloth", width: 1.5, join: "miter" }),
    ...(tail > 0.8 ? ends : []),
    ...(width > NARROW ? [label] : []),
  ]);
}

/** A piece that is no broader has no room for a length written upward [px]. */
const NARROW = TYPE.note * 0.8;

/** Over many narrow pieces of one length: how many and how long. */
function runLabel(
  { from, to, top }: { readonly from: number; readonly to: number; readonly top: number },
  { lengthM, count }: CutPattern["cuts"][number],
  words: Words,
): Item[] {
  const said = word("cuts.pieces", {
    count: quantity("count", count, 0),
    length: quantity("length", lengthM, 2),
  });
  if (words.measure(words.labels(said), TYPE.note, 600) > to - from - 4) return [];
  const at = [(from + to) / 2, top + (BAR - TAIL) / 2 + TYPE.note * 0.36] as const;
  return [text(said, at, { size: TYPE.note, weight: 600, anchor: "middle", halo: "paper" })];
}

/** Height of the dark ends [px]. */
const TAIL = 5;

/** "2 × cord-50, 50.0 m: 6 × 2.10 m, 4 × 3.45 m, 1.2 m left". */
export function patternText({ item, stockM, times, cuts, restM }: CutPattern): TextItem {
  const spool = {
    item: item === undefined ? word("cuts.to-buy") : name(item),
    length: quantity("length", stockM, 1),
    count: quantity("count", times, 0),
  };
  const pieces = cuts.map(({ lengthM, count }) =>
    word("cuts.pieces", { count: quantity("count", count, 0), length: quantity("length", lengthM, 2) }),
  );
  const left = restM > 0.005 ? [word("cuts.left", { length: quantity("length", restM, 2) })] : [];
  return word("verdict.about", {
    verdict: word(times > 1 ? "cuts.spool-times" : "cuts.spool", spool),
    about: listed([...pieces, ...left]),
  });
}

function leftOver(from: number, to: number, top: number): Item[] {
  const strokes: PathStep[] = [];
  for (let x = from + 6; x < to + BAR; x += 8) {
    const [x1, x2] = [Math.min(x, to), Math.max(x - BAR, from)];
    if (x1 <= x2) continue;
    strokes.push(["M", x1, top + (x - x1)], ["L", x2, top + (x - x2)]);
  }
  return [path(strokes, { fill: "none", stroke: "rule", width: 1, cap: "butt", class: "ns-left" })];
}
