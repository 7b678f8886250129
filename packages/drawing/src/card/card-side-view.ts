import { handMarks } from "@nightspan/core";
import type { BerthFacts } from "../berth/berth-facts.ts";
import { bodyMarkText, levelText, markText, spanText } from "../berth/berth-words.ts";
import { dimension } from "../berth/dimension.ts";
import { groundRangeM, highestStrapM, onPaper, PAPER_LINES, type SideFrame } from "../berth/side-frame.ts";
import { ridgeTopM } from "../berth/side-tarp.ts";
import { sideFigure } from "../berth/side-figure.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { name, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";

const SIDE = 15;
const DIM = { width: 0.2, tick: 0.9 } as const;
const NOTE = { size: TYPE_MM.note, weight: 600 } as const;

/** The side view for paper: no forces, only what hands set. Within a box of `width` from `at` down. */
export function cardSideView(
  facts: BerthFacts,
  [x, y]: XY,
  width: number,
  height: number,
  words: Words,
): Item[] {
  const { hang, spanM } = facts.berth;
  const [lowM] = groundRangeM(hang);
  const topZM = Math.max(highestStrapM(hang) + 0.28, (ridgeTopM(facts.berth) ?? 0) + 0.15);
  const scale = Math.min((width - 2 * SIDE) / spanM, (height - 11) / (topZM - lowM));
  const originX = x + (width - spanM * scale) / 2;
  const frame: SideFrame = {
    scale,
    originX,
    originY: y + 4.4 + topZM * scale,
    lines: PAPER_LINES,
    topZM,
    leftX: x,
    rightX: x + width,
  };
  return [...sideFigure(facts, frame, false), ...figures(facts, frame, words)];
}

function figures(facts: BerthFacts, frame: SideFrame, words: Words): Item[] {
  const { head, foot, berth, setter } = facts;
  const { shape } = berth.hang;
  const [headX, top] = onPaper(frame, [0, frame.topZM]);
  const [footX] = onPaper(frame, [berth.spanM, 0]);
  const [, strapY] = onPaper(frame, shape.headAnchor);
  const [, baseY] = onPaper(frame, [0, 0]);
  const heightM = handMarks(berth).headHeightM;
  const x = frame.leftX + 3;
  const middle = (strapY + baseY) / 2;
  const below = onPaper(frame, [0, groundRangeM(berth.hang)[0]])[1] + 6.6;
  const centre = (headX + footX) / 2;
  const level = levelText(facts, "bare");
  const half = words.measure(words.labels(level), NOTE.size, NOTE.weight) / 2;
  const [bark, gather] = [onPaper(frame, shape.headAnchor)[0], onPaper(frame, shape.footGather)[0]];
  const between = Math.max((bark + gather) / 2, bark + half + 1);
  const mark = wrapped(
    bodyMarkText(heightM, setter.statureM),
    [frame.leftX, middle + 3.7],
    { ...NOTE, weight: 500, width: SIDE, leading: 3.6, mostLines: 2 },
    words,
  );
  return [
    text(word("back.head-tag", { tag: name(head.tag) }), [headX, top - 1.2], {
      ...NOTE,
      anchor: "middle",
      maxWidth: 34,
    }),
    text(word("back.foot-tag", { tag: name(foot.tag) }), [footX, top - 1.2], {
      ...NOTE,
      anchor: "middle",
      maxWidth: 34,
    }),
    dimension([x, strapY], [x, middle - 3.6], DIM),
    dimension([x, mark.bottom + 1.5], [x, baseY], DIM),
    text(markText(heightM), [frame.leftX, middle], { ...NOTE, weight: 700 }),
    ...mark.items,
    levelLine(facts, frame),
    text(level, [between, facts.berth.tarp === undefined ? strapY - 1.6 : strapY + 3.3], {
      ...NOTE,
      anchor: "middle",
      halo: "paper",
    }),
    text(spanText(facts), [centre, below], { ...NOTE, anchor: "middle" }),
  ];
}

function levelLine({ berth }: BerthFacts, frame: SideFrame): Item {
  const [from, y] = onPaper(frame, [0.1, berth.hang.shape.headAnchor[1]]);
  const [to] = onPaper(frame, [berth.spanM + 0.25, 0]);
  return line(
    [
      [from, y],
      [to, y],
    ],
    { stroke: "ink", width: 0.2, dash: [1.6, 0.7, 0.3, 0.7], cap: "butt" },
  );
}
