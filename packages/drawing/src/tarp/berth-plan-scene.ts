import type { Camp, Plan, Point2 } from "@nightspan/core";
import { berthFacts, type BerthFacts, type EndFacts } from "../berth/berth-facts.ts";
import { tarpRidgeTexts } from "../berth/berth-words.ts";
import { LINE, TYPE } from "../colour/tokens.ts";
import { berthLeaf } from "../map/berth-symbols.ts";
import { neededSymbol, treeSymbol } from "../map/tree-symbols.ts";
import { name, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { box, group, line, polygon, stroke, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { abovePx, planFrame, type PlanFrame } from "./plan-frame.ts";
import { dripAbove, dripShare, tarpAbove } from "./tarp-above.ts";
import { tarpTexts } from "./tarp-words.ts";
import { wetStrokes } from "./wet-strokes.ts";

export interface BerthPlanOptions {
  readonly words: Words;
  readonly widthPx: number;
  /** False leaves out the sentences beneath, for a page that says them itself. */
  readonly figures?: boolean;
}

const TOP = 40;

/**
 * One berth from above: where rain reaches, the tarp's edges, guys, pegs and drip lines, and the hammock between its
 * trees. Head left, so that the left side is up.
 *
 * Units    metres in, pixels out, one scale
 */
export function berthPlanScene(plan: Plan, camp: Camp, berthId: string, options: BerthPlanOptions): Scene {
  const facts = berthFacts(plan, camp, berthId);
  const { tarp } = facts.berth;
  const frame = planFrame(facts.berth, tarp, options.widthPx, TOP);
  const to = (place: Point2): XY => abovePx(frame, place);
  const below = beneath(facts, frame, options);
  const wet = tarp?.wetMap === undefined ? [] : wetStrokes(tarp.wetMap, frame);
  return {
    name: "berth-plan",
    size: { width: options.widthPx, height: Math.ceil(below.bottom), unit: "px" },
    title: word("tarp.plan-title", { berth: name(berthId), sleeper: name(facts.sleeper.name) }),
    desc: word("tarp.plan-desc", { verdict: word(`verdict.${facts.berth.verdict}.capital`) }),
    ground: "wood",
    items: [
      ...wet,
      ...(tarp === undefined ? [] : [tarpAbove(tarp, to, "none")]),
      ...hammock(facts, frame),
      ...trees(facts, frame),
      ...dripLines(facts, frame),
      ...directions(facts, camp, frame),
      ...headings(facts, frame),
      ...below.items,
    ],
  };
}

function hammock({ berth }: BerthFacts, frame: PlanFrame): Item[] {
  const { headGather, footGather } = berth.hang.shape;
  const ends = {
    head: abovePx(frame, [0, 0]),
    foot: abovePx(frame, [berth.spanM, 0]),
    cloth: [headGather[0] / berth.spanM, footGather[0] / berth.spanM] as const,
  };
  return [berthLeaf(ends, frame.pxPerM)];
}

function trees({ berth, head, foot }: BerthFacts, frame: PlanFrame): Item[] {
  const tree = (end: EndFacts, xM: number): Item => {
    const r = Math.max(5, (end.dbhM / 2) * frame.pxPerM);
    const at = abovePx(frame, [xM, 0]);
    return end.lookedAt
      ? treeSymbol("looked-at", at, r, `tree/${end.id}`)
      : neededSymbol(at, r, `tree/${end.id}`);
  };
  return [tree(head, 0), tree(foot, berth.spanM)];
}

/** On the strap, from the gather outward. */
function dripLines({ berth }: BerthFacts, frame: PlanFrame): Item[] {
  const { tarp, hang } = berth;
  if (tarp === undefined) return [];
  const { shape } = hang;
  const ends = [
    { drip: tarp.drip.head, strap: hang.head, gather: shape.headGather, anchor: shape.headAnchor },
    { drip: tarp.drip.foot, strap: hang.foot, gather: shape.footGather, anchor: shape.footAnchor },
  ];
  return ends.map(({ drip, strap, gather, anchor }) => {
    const share = dripShare(drip, strap.strapLengthM);
    return dripAbove(abovePx(frame, [gather[0] + (anchor[0] - gather[0]) * share, 0]));
  });
}

/** North and where the wind comes from, where both can be known. */
function directions({ berth }: BerthFacts, camp: Camp, frame: PlanFrame): Item[] {
  if (berth.bearingRad === undefined) return [];
  // On the paper the berth runs to the right: a bearing is turned by a quarter less the berth's own.
  const turned = (bearing: number): number => bearing - (berth.bearingRad ?? 0) + Math.PI / 2;
  const from = camp.night?.windFromRad;
  const right = frame.widthPx - 30;
  return [
    group(northArrow(), {
      class: "ns-north",
      move: [right, TOP + 6],
      turnRad: turned(0),
      title: word("map.north"),
    }),
    text(word("map.north"), [right, TOP + 46], { size: TYPE.note, weight: 700, anchor: "middle" }),
    ...(from === undefined
      ? []
      : [
          group(windArrow(), {
            class: "ns-wind",
            move: [right - 44, TOP + 6],
            turnRad: turned(from),
            title: word("map.wind"),
          }),
        ]),
  ];
}

function northArrow(): Item[] {
  return [
    stroke([0, 18, 0, -10], { stroke: "ink", width: 2.5, cap: "butt" }),
    polygon(
      [
        [0, -20],
        [7, -5],
        [-7, -5],
      ],
      { fill: "ink" },
    ),
  ];
}

function windArrow(): Item[] {
  const ink = { stroke: "ink", width: 2 } as const;
  return [
    stroke([0, -17, 0, 16], ink),
    line(
      [
        [-6, 9],
        [0, 17],
        [6, 9],
      ],
      ink,
    ),
    stroke([0, -16, 8, -20], ink),
    stroke([0, -9, 8, -13], ink),
  ];
}

function headings({ head, foot, berth }: BerthFacts, frame: PlanFrame): Item[] {
  const room = frame.widthPx / 3;
  const at = (end: EndFacts, xM: number, key: "berth.head" | "berth.foot"): Item[] => {
    const [x, y] = abovePx(frame, [xM, 0]);
    const r = Math.max(12, (end.dbhM / 2) * frame.pxPerM) + 8;
    const anchor = xM === 0 ? "start" : "end";
    const edge = xM === 0 ? Math.max(10, x - r) : Math.min(frame.widthPx - 10, x + r);
    return [
      text(word(key), [edge, y + r + 14], { size: TYPE.note, weight: 700, anchor, halo: "wood" }),
      text(name(end.tag), [edge, y + r + 33], { size: TYPE.note, anchor, halo: "wood", maxWidth: room }),
    ];
  };
  return [...at(head, 0, "berth.head"), ...at(foot, berth.spanM, "berth.foot")];
}

interface Below {
  readonly items: readonly Item[];
  readonly bottom: number;
}

/** What the drawing means, in words, and where a sign stands for what. */
function beneath(facts: BerthFacts, frame: PlanFrame, { words, figures }: BerthPlanOptions): Below {
  const { berth } = facts;
  const top = TOP + frame.heightPx + 14;
  if (figures === false) return { items: [], bottom: top };
  const said: TextItem[] =
    berth.tarp === undefined
      ? [word("tarp.not-checked")]
      : [
          ...tarpRidgeTexts(facts),
          ...tarpTexts(berth.tarp),
          ...(berth.tarp.wetMap === undefined ? [] : [word("tarp.rain-strokes")]),
        ];
  const columns = frame.widthPx >= 640 ? 2 : 1;
  const width = (frame.widthPx - 28 - (columns - 1) * 24) / columns;
  const perColumn = Math.ceil(said.length / columns);
  let lowest = top;
  const items = Array.from({ length: columns }, (_, column) => {
    let y = top + 26;
    return said.slice(column * perColumn, (column + 1) * perColumn).flatMap((item, index) => {
      const bold = column === 0 && index === 0 ? 700 : 500;
      const style = { size: TYPE.note, weight: bold, width, leading: 20 } as const;
      const set = wrapped(item, [14 + column * (width + 24), y], style, words);
      y = set.bottom + 24;
      lowest = Math.max(lowest, set.bottom);
      return set.items;
    });
  }).flat();
  const bottom = lowest + 16;
  const panel = [
    box([0, top], frame.widthPx, bottom - top, { fill: "paper" }),
    stroke([0, top, frame.widthPx, top], { stroke: "ink", width: LINE.guy }),
  ];
  return { items: [...panel, ...items], bottom };
}
