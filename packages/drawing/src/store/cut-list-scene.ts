import type { CutPattern, MaterialCuts, Plan } from "@nightspan/core";
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
const BAR = 24;

/** Each spool as a bar, the pieces cut from it end to end, what is left hatched; one scale for each material. */
export function cutListScene(plan: Plan, { words, widthPx }: StoreOptions): Scene {
  const materials = plan.cuts?.materials ?? [];
  let y = 8;
  const items = materials.flatMap((cuts) => {
    const drawn = material(cuts, y, widthPx, words);
    y = drawn.bottom + 18;
    return drawn.items;
  });
  if (materials.length === 0) items.push(text(word("cuts.none"), [EDGE, 28], { size: TYPE.body }));
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
    const drawn = bar(pattern, y, pxPerM, widthPx, words);
    y = drawn.bottom + 14;
    return drawn.items;
  });
  const foot = text(provenText(cuts), [EDGE, y + 6], {
    size: TYPE.note,
    fill: "soft",
    maxWidth: widthPx - 2 * EDGE,
  });
  return { items: [head, ...bars, foot], bottom: y + 8 };
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

function bar(pattern: CutPattern, top: number, pxPerM: number, widthPx: number, words: Words): Drawn {
  const { stockM, cuts, restM } = pattern;
  let x = EDGE;
  const pieces = cuts.flatMap(({ lengthM, count }) =>
    Array.from({ length: count }, () => {
      const width = lengthM * pxPerM;
      const piece = box([x, top], width, BAR, {
        fill: "cloth-tint",
        stroke: "cloth",
        width: 1.5,
        join: "miter",
      });
      x += width;
      return piece;
    }),
  );
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
