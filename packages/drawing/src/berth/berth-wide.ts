import type { HangQuantity, StrapHang } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import type { BerthFacts, EndFacts } from "./berth-facts.ts";
import {
  bodyMarkText,
  levelText,
  limitText,
  markText,
  newtonText,
  pullText,
  spanText,
  treeText,
} from "./berth-words.ts";
import { dimension, dimensionWithGap } from "./dimension.ts";
import { BAND_WIDTH, okBand } from "./ok-band.ts";
import { newtonsPerCm, pullArrow } from "./pull-arrow.ts";
import { groundRangeM, highestStrapM, onPaper, SCREEN_LINES, type SideFrame } from "./side-frame.ts";
import { sideFigure } from "./side-figure.ts";
import { lowest } from "./sleeper-silhouette.ts";

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

type End = "head" | "foot";

const SIDE = 178;
const TOP = 72;
/** Width of the words at the low point [px]. */
const LOW_WORDS_PX = 150;
const DIM = { width: 1, tick: 5 } as const;

/** The side view with its figures beside it. */
export function berthWide(facts: BerthFacts, options: SideOptions): BerthDrawing {
  const frame = wideFrame(facts, options.widthPx);
  const items = [
    ...sideFigure(facts, frame, true),
    ...levelLine(facts, frame),
    ...(options.pulls ? pulls(facts, frame) : []),
    ...headings(facts, frame),
    ...heights(facts, frame, "head", options.words),
    ...heights(facts, frame, "foot", options.words),
    ...bandOf(facts, frame, "head"),
    ...bandOf(facts, frame, "foot"),
    ...lowPoint(facts, frame),
    ...seat(facts, frame),
    ...spanBelow(facts, frame, options.words),
  ];
  return { items, height: Math.ceil(bottomOf(facts, frame) + 96) };
}

function wideFrame(facts: BerthFacts, widthPx: number): SideFrame {
  const { hang, spanM } = facts.berth;
  const scale = Math.min(175, (widthPx - 2 * SIDE) / spanM);
  const topZM = highestStrapM(hang) + 0.62;
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

function bottomOf({ berth }: BerthFacts, frame: SideFrame): number {
  return onPaper(frame, [0, groundRangeM(berth.hang)[0]])[1];
}

function headings({ head, foot, berth }: BerthFacts, frame: SideFrame): Item[] {
  const over = (end: EndFacts, xM: number, key: "berth.head" | "berth.foot"): Item[] => {
    const [x, y] = onPaper(frame, [xM, frame.topZM]);
    return [
      text(word(key), [x, y - 34], { size: TYPE.lead, weight: 700, anchor: "middle" }),
      text(treeText(end), [x, y - 13], { size: TYPE.note, anchor: "middle", fill: "soft" }),
    ];
  };
  return [...over(head, 0, "berth.head"), ...over(foot, berth.spanM, "berth.foot")];
}

interface EndPlace {
  readonly strap: StrapHang;
  readonly anchor: XY;
  readonly base: XY;
  /** Outer bark. */
  readonly barkX: number;
  /** Away from the berth: −1 left, 1 right. */
  readonly out: -1 | 1;
}

function placeOf({ berth, head, foot }: BerthFacts, frame: SideFrame, end: End): EndPlace {
  const { hang, spanM } = berth;
  const atHead = end === "head";
  const base = onPaper(frame, atHead ? [0, 0] : [spanM, hang.shape.groundFootZM]);
  const out = atHead ? -1 : 1;
  const radius = ((atHead ? head : foot).dbhM / 2) * frame.scale;
  return {
    strap: atHead ? hang.head : hang.foot,
    anchor: onPaper(frame, atHead ? hang.shape.headAnchor : hang.shape.footAnchor),
    base,
    barkX: base[0] + out * radius,
    out,
  };
}

/** Strap height above the ground at that tree, with the body mark of whoever sets it. */
function heights(facts: BerthFacts, frame: SideFrame, end: End, words: Words): Item[] {
  const { strap, anchor, base, out, barkX } = placeOf(facts, frame, end);
  const x = end === "head" ? 56 : frame.rightX - 56;
  const middle = (anchor[1] + base[1]) / 2 + 26;
  if (end === "foot" && !facts.berth.groundKnown) {
    const style = {
      size: TYPE.note,
      weight: 600,
      halo: "paper",
      width: frame.rightX - 12 - barkX - 18,
      leading: 20,
    } as const;
    return [...wrapped(levelText(facts, "short"), [barkX + 18, anchor[1] - 4], style, words).items];
  }
  const unsure = facts.berth.hang.band[`${end}.strapHeightM`];
  const about: TextItem[] = unsure === undefined ? [] : [aboutText(unsure)];
  const mark = bodyMarkText(strap.strapHeightM, facts.setter.statureM);
  return [
    dimension([x, anchor[1]], [x, middle - 30], { ...DIM }),
    dimension([x, middle + 24 + 20 * about.length], [x, base[1]], { ...DIM }),
    text(markText(strap.strapHeightM), [x, middle - 4], {
      size: 24,
      weight: 700,
      anchor: "middle",
      halo: "paper",
    }),
    text(mark, [x, middle + 15], { size: TYPE.note, anchor: "middle", halo: "paper" }),
    ...about.map((item) =>
      text(item, [x + out * 44, middle + 35], {
        size: TYPE.note,
        anchor: out === -1 ? "start" : "end",
        fill: "soft",
        halo: "paper",
      }),
    ),
  ];
}

function aboutText([low, high]: readonly [number, number]): TextItem {
  return word("berth.about", { low: quantity("length", low, 2), high: quantity("length", high, 2) });
}

/** The range that still serves, and which rule ends it at each end. */
function bandOf(facts: BerthFacts, frame: SideFrame, end: End): Item[] {
  const key: HangQuantity = `${end}.strapHeightM`;
  const range = facts.berth.hang.ok[key];
  if (range === undefined || (end === "foot" && !facts.berth.groundKnown)) return [];
  const { strap, base, barkX, out } = placeOf(facts, frame, end);
  const yOf = (heightM: number): number => base[1] - heightM * frame.scale;
  const x = out === -1 ? barkX - 22 - BAND_WIDTH : barkX + 22;
  const unsure = facts.berth.hang.band[key];
  const band = okBand({
    x,
    towards: out === -1 ? 1 : -1,
    range,
    planned: strap.strapHeightM,
    yOf,
    ...(unsure === undefined ? {} : { unsure }),
  });
  const at = out === -1 ? x + BAND_WIDTH + 4 : x - 4;
  const anchor = out === -1 ? "end" : "start";
  const note = { size: TYPE.note, anchor, halo: "paper" } as const;
  const numbers = { ...note, weight: 600 } as const;
  const [top, bottom] = [yOf(range.high), yOf(range.low)];
  return [
    band,
    text(limitText(range.bindsHigh), [at, top - 26], note),
    text(quantity("length", range.high, 2), [at, top - 8], numbers),
    text(quantity("length", range.low, 2), [at, bottom + 19], numbers),
    text(limitText(range.bindsLow), [at, bottom + 37], note),
  ];
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

/** Ground to the lowest cloth, lying. */
function lowPoint(facts: BerthFacts, frame: SideFrame): Item[] {
  const { hang, spanM } = facts.berth;
  const at = lowest(hang.shape.cloth);
  const groundZM = (hang.shape.groundFootZM * at[0]) / spanM;
  const [x, y] = onPaper(frame, [at[0] + 0.12, at[1]]);
  const base = onPaper(frame, [at[0] + 0.12, groundZM])[1];
  // The words stand clear of rising ground.
  const rise = Math.max(0, (hang.shape.groundFootZM / spanM) * LOW_WORDS_PX);
  const middle = Math.min((y + base) / 2 + 21, base - 9 - rise);
  return [
    dimension([x, y + 3], [x, base], DIM),
    text(quantity("short-length", hang.lowPointM, 0), [x + 14, middle - 19], {
      size: 24,
      weight: 700,
      halo: "paper",
    }),
    text(word("berth.low"), [x + 14, middle], { size: TYPE.note, halo: "paper" }),
  ];
}

/** Ground to the cloth under somebody sitting. */
function seat(facts: BerthFacts, frame: SideFrame): Item[] {
  const { hang, spanM } = facts.berth;
  const at = lowest(hang.shape.clothSitting);
  const xM = at[0] - 0.52;
  const [x, y] = onPaper(frame, [xM, at[1]]);
  const base = onPaper(frame, [xM, (hang.shape.groundFootZM * xM) / spanM])[1];
  const [seatX] = onPaper(frame, at);
  const unsure = hang.band.seatHeightM;
  const middle = (y + base) / 2;
  return [
    line(
      [
        [x - 6, y],
        [seatX, y],
      ],
      { stroke: "rule", width: 1, dash: [4, 3], cap: "butt" },
    ),
    dimension([x, y], [x, base], DIM),
    text(
      word("berth.seat", { height: quantity("short-length", hang.seatHeightM, 0) }),
      [x - 14, middle + 2],
      {
        size: TYPE.body,
        weight: 600,
        anchor: "end",
        halo: "paper",
      },
    ),
    ...(unsure === undefined
      ? []
      : [
          text(
            word("berth.about", {
              low: quantity("short-length", unsure[0], 0),
              high: quantity("short-length", unsure[1], 0),
            }),
            [x - 14, middle + 21],
            { size: TYPE.note, anchor: "end", fill: "soft", halo: "paper" },
          ),
        ]),
  ];
}

/** Bark to bark, in metres and in the sleeper's steps. */
function spanBelow(facts: BerthFacts, frame: SideFrame, words: Words): Item[] {
  const said = spanText(facts);
  const { shape } = facts.berth.hang;
  const y = bottomOf(facts, frame) + 46;
  const [left, right] = [onPaper(frame, shape.headAnchor)[0], onPaper(frame, shape.footAnchor)[0]];
  const dotted = { stroke: "rule", width: 1.25, dash: [1.5, 3.5], cap: "butt" } as const;
  const drops = [
    line(
      [
        [left, onPaper(frame, [0, 0])[1] + 6],
        [left, y + 8],
      ],
      dotted,
    ),
    line(
      [
        [right, onPaper(frame, [0, shape.groundFootZM])[1] + 6],
        [right, y + 8],
      ],
      dotted,
    ),
  ];
  const unknown = facts.berth.groundKnown
    ? []
    : [text(word("berth.ground-unknown"), [14, y + 36], { size: TYPE.note, fill: "soft", halo: "paper" })];
  return [
    ...drops,
    ...dimensionWithGap([left, y], [right, y], words.measure(words.labels(said), TYPE.lead, 700) + 20, DIM),
    text(said, [(left + right) / 2, y + 7], {
      size: TYPE.lead,
      weight: 700,
      anchor: "middle",
      halo: "paper",
    }),
    ...unknown,
  ];
}
