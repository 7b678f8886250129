import { TYPE } from "../colour/tokens.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import type { BerthFacts, EndFacts } from "./berth-facts.ts";
import { levelText, newtonText, pullText, treeText } from "./berth-words.ts";
import { newtonsPerCm, pullArrow } from "./pull-arrow.ts";
import { highestStrapM, onPaper, SCREEN_LINES, type SideFrame } from "./side-frame.ts";
import { sideFigure } from "./side-figure.ts";
import { bottomOf, lowPoint, seat, spanBelow } from "./wide-clearances.ts";
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

/** The side view with its figures beside it. */
export function berthWide(facts: BerthFacts, options: SideOptions): BerthDrawing {
  const frame = wideFrame(facts, options.widthPx);
  const items = [
    ...sideFigure(facts, frame, true),
    ...levelLine(facts, frame),
    ...(options.pulls ? pulls(facts, frame) : []),
    ...headings(facts, frame),
    ...strapHeight(facts, frame, "head", options.words),
    ...strapHeight(facts, frame, "foot", options.words),
    ...strapRange(facts, frame, "head"),
    ...strapRange(facts, frame, "foot"),
    ...lowPoint(facts, frame),
    ...seat(facts, frame),
    ...spanBelow(facts, frame, options.words),
  ];
  return { items, height: Math.ceil(bottomOf(facts, frame) + 96) };
}

function wideFrame(facts: BerthFacts, widthPx: number): SideFrame {
  const { hang, spanM } = facts.berth;
  const scale = Math.min(175, (widthPx - 2 * SIDE) / spanM);
  const topZM = highestStrapM(hang) + Math.max(0.62, OVER_STRAP_PX / scale);
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
    text(levelText(facts, "long"), [x, y - 9], {
      size: TYPE.note,
      weight: 600,
      anchor: "middle",
      halo: "paper",
    }),
  ];
}

function pulls(facts: BerthFacts, frame: SideFrame): Item[] {
  const { shape, head, foot } = facts.berth.hang;
  const ends = [
    {
      strap: head,
      from: onPaper(frame, shape.headAnchor),
      to: onPaper(frame, shape.headGather),
      anchor: "start" as const,
    },
    {
      strap: foot,
      from: onPaper(frame, shape.footAnchor),
      to: onPaper(frame, shape.footGather),
      anchor: "end" as const,
    },
  ];
  const perCm = newtonsPerCm(
    ends.map(({ strap, from, to }) => ({
      pullN: strap.pullN,
      roomPx: 0.86 * Math.hypot(to[0] - from[0], to[1] - from[1]),
    })),
  );
  const top = Math.min(...ends.map(({ from }) => from[1])) - 40;
  const words = ends.flatMap(({ strap, from, anchor }) => {
    const x = from[0] + (anchor === "start" ? 22 : -22);
    return [
      text(pullText(strap.pullN), [x, top - 21], { size: TYPE.body, weight: 600, anchor, halo: "paper" }),
      text(newtonText(strap.pullN), [x, top], { size: TYPE.note, anchor, fill: "soft", halo: "paper" }),
    ];
  });
  const scale = word("berth.force-scale", { force: quantity("force", perCm, 0) });
  return [
    ...ends.map(({ strap, from, to }) => pullArrow(from, to, strap.pullN, perCm, 5)),
    ...words,
    text(scale, [frame.rightX - 14, bottomOf(facts, frame) + 82], {
      size: TYPE.note,
      anchor: "end",
      fill: "soft",
    }),
  ];
}
