import type { Point2, StrapHang } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import type { BerthFacts, EndFacts } from "./berth-facts.ts";
import { levelText, newtonText, pullText, tarpRidgeTexts, treeText } from "./berth-words.ts";
import { newtonsPerCm, pullArrow } from "./pull-arrow.ts";
import { highestStrapM, onPaper, SCREEN_LINES, type SideFrame } from "./side-frame.ts";
import { ridgeTopM } from "./side-tarp.ts";
import { sideFigure } from "./side-figure.ts";
import { bottomOf, lowPoint, seat, spanBelow } from "./wide-clearances.ts";
import { spanWindowBand } from "./span-window.ts";
import { strapHeight, strapRange } from "./wide-heights.ts";

export interface BerthDrawing {
  readonly items: readonly Item[];
  readonly height: number;
}

export interface SideOptions {
  readonly words: Words;
  readonly widthPx: number;
  readonly pulls: boolean;
  /** Whether a narrow drawing has its figures beneath. */
  readonly figures: boolean;
}

const SIDE = 178;
const TOP = 72;
/** Trunk above the higher strap: room for what pulls there [px]. */
const OVER_STRAP_PX = 88;
/** Trunk above the tarp's ridge line [px]. */
const OVER_RIDGE_PX = 88;

/** The side view with its figures beside it. */
export function berthWide(facts: BerthFacts, options: SideOptions): BerthDrawing {
  const frame = wideFrame(facts, options.widthPx);
  const bottom = bottomOf(facts, frame) + 68;
  const spans = spanWindowBand(
    facts,
    { x: frame.originX, y: bottom + 4, pxPerM: frame.scale, rightX: frame.rightX },
    options.words,
  );
  const items = [
    ...sideFigure(facts, frame, true),
    ...levelLine(facts, frame),
    ...(options.pulls ? pulls(facts, frame) : []),
    ...headings(facts, frame),
    ...strapHeight(facts, frame, "head", options.words),
    ...strapHeight(facts, frame, "foot", options.words),
    ...strapRange(facts, frame, "head"),
    ...strapRange(facts, frame, "foot"),
    ...tarpWords(facts, frame),
    ...lowPoint(facts, frame),
    ...seat(facts, frame),
    ...spanBelow(facts, frame, options.words),
    ...spans.items,
    ...beneath(facts, frame, options.pulls, bottom + spans.height),
  ];
  return { items, height: Math.ceil(bottom + spans.height + 26) };
}

function wideFrame(facts: BerthFacts, widthPx: number): SideFrame {
  const { hang, spanM } = facts.berth;
  const scale = Math.min(175, (widthPx - 2 * SIDE) / spanM);
  const strapRoom = highestStrapM(hang) + Math.max(0.62, OVER_STRAP_PX / scale);
  const topZM = Math.max(strapRoom, (ridgeTopM(facts.berth) ?? 0) + OVER_RIDGE_PX / scale);
  const originX = (widthPx - spanM * scale) / 2;
  return {
    scale,
    originX,
    originY: TOP + topZM * scale,
    lines: SCREEN_LINES,
    topZM,
    leftX: 0,
    rightX: widthPx,
  };
}

function headings({ head, foot, berth }: BerthFacts, frame: SideFrame): Item[] {
  const over = (end: EndFacts, xM: number, key: "berth.head" | "berth.foot"): Item[] => {
    const [x, y] = onPaper(frame, [xM, frame.topZM]);
    const maxWidth = 2 * Math.min(frame.originX - 10, (berth.spanM * frame.scale) / 2 - 8);
    return [
      text(word(key), [x, y - 34], { size: TYPE.lead, weight: 700, anchor: "middle" }),
      text(treeText(end), [x, y - 13], { size: TYPE.note, anchor: "middle", fill: "soft", maxWidth }),
    ];
  };
  return [...over(head, 0, "berth.head"), ...over(foot, berth.spanM, "berth.foot")];
}

/** A level line through the head strap, and how the foot strap lies to it. */
function levelLine(facts: BerthFacts, frame: SideFrame): Item[] {
  const { spanM, hang } = facts.berth;
  const [, y] = onPaper(frame, hang.shape.headAnchor);
  const [from] = onPaper(frame, [-0.1, 0]);
  const to = onPaper(frame, [spanM + facts.foot.dbhM / 2, 0])[0] + 12;
  const x = onPaper(frame, [(hang.shape.headGather[0] + hang.shape.footGather[0]) / 2, 0])[0];
  return [
    line(
      [
        [from, y],
        [to, y],
      ],
      { class: "ns-level", stroke: "rule", width: 1.25, dash: [9, 4, 1.5, 4], cap: "butt" },
    ),
    text(levelText(facts, "long"), [x, y + (overLevelFree(facts, frame, y) ? -9 : 19)], {
      size: TYPE.note,
      weight: 600,
      anchor: "middle",
      halo: "paper",
    }),
  ];
}

interface PullEnd {
  readonly strap: StrapHang;
  readonly from: XY;
  readonly to: XY;
  readonly anchor: "start" | "end";
}

function pullEnds({ berth }: BerthFacts, frame: SideFrame): readonly PullEnd[] {
  const { shape, head, foot } = berth.hang;
  const at = (point: Point2): XY => onPaper(frame, point);
  return [
    { strap: head, from: at(shape.headAnchor), to: at(shape.headGather), anchor: "start" },
    { strap: foot, from: at(shape.footAnchor), to: at(shape.footGather), anchor: "end" },
  ];
}

function pullScale(ends: readonly PullEnd[]): number {
  return newtonsPerCm(
    ends.map(({ strap, from, to }) => ({
      pullN: strap.pullN,
      roomPx: 0.86 * Math.hypot(to[0] - from[0], to[1] - from[1]),
    })),
  );
}

/** Whether the words of the level line have room over it, beneath the tarp's ridge. */
function overLevelFree({ berth }: BerthFacts, frame: SideFrame, y: number): boolean {
  const { tarp, hang, spanM } = berth;
  if (tarp === undefined) return true;
  const middleM = (tarp.ridge.headTieM + tarp.ridge.footTieM + hang.shape.groundFootZM) / 2;
  return y - onPaper(frame, [spanM / 2, middleM])[1] > 32;
}

function pulls(facts: BerthFacts, frame: SideFrame): Item[] {
  const ends = pullEnds(facts, frame);
  const perCm = pullScale(ends);
  const top = overAll(facts, frame, Math.min(...ends.map(({ from }) => from[1])) - 40);
  const words = ends.flatMap(({ strap, from, anchor }) => {
    const x = from[0] + (anchor === "start" ? 22 : -22);
    return [
      text(pullText(strap.pullN), [x, top - 21], { size: TYPE.body, weight: 600, anchor, halo: "paper" }),
      text(newtonText(strap.pullN), [x, top], { size: TYPE.note, anchor, fill: "soft", halo: "paper" }),
    ];
  });
  return [...ends.map(({ strap, from, to }) => pullArrow(from, to, strap.pullN, perCm, 5)), ...words];
}

/** Words about pulls stand over the tarp's ridge line too. */
function overAll({ berth }: BerthFacts, frame: SideFrame, y: number): number {
  const ridge = ridgeTopM(berth);
  return ridge === undefined ? y : Math.min(y, onPaper(frame, [0, ridge])[1] - 34);
}

/** The height of the tarp's ridge, beneath its line. */
function tarpWords(facts: BerthFacts, frame: SideFrame): Item[] {
  const ridge = ridgeTopM(facts.berth);
  if (ridge === undefined) return [];
  const [x, y] = onPaper(frame, [facts.berth.spanM / 2, ridge]);
  return tarpRidgeTexts(facts).map((item) =>
    text(item, [x, y - 8], { size: TYPE.note, weight: 600, anchor: "middle", halo: "paper" }),
  );
}

/** Under everything: that the ground is not known, and what the arrows' length means. */
function beneath(facts: BerthFacts, frame: SideFrame, pulls: boolean, y: number): Item[] {
  const note = { size: TYPE.note, fill: "soft", halo: "paper" } as const;
  const unknown = facts.berth.groundKnown ? [] : [text(word("berth.ground-unknown"), [14, y + 14], note)];
  if (!pulls) return unknown;
  const force = quantity("force", pullScale(pullEnds(facts, frame)), 0);
  const scale = word("berth.force-scale", { force });
  return [...unknown, text(scale, [frame.rightX - 14, y + 14], { ...note, anchor: "end" })];
}
