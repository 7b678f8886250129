import type { HangQuantity, OkRange } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import type { BerthFacts, EndFacts } from "./berth-facts.ts";
import type { BerthDrawing, SideOptions } from "./berth-wide.ts";
import {
  aboutText,
  bodyMarkText,
  levelText,
  tarpRidgeTexts,
  limitText,
  markText,
  newtonText,
  pullText,
  setByText,
  spanText,
  toldHeightM,
  treeText,
} from "./berth-words.ts";
import { dimension } from "./dimension.ts";
import { BAND_WIDTH, okBand } from "./ok-band.ts";
import { newtonsPerCm, pullArrow } from "./pull-arrow.ts";
import {
  groundRangeM,
  highestStrapM,
  onPaper,
  SCREEN_LINES,
  type LineSet,
  type SideFrame,
} from "./side-frame.ts";
import { ridgeTopM } from "./side-tarp.ts";
import { sideFigure } from "./side-figure.ts";
import { lowest } from "./sleeper-silhouette.ts";

type End = "head" | "foot";

const SIDE = 84;
const TOP = 56;
const DIM = { width: 1, tick: 4 } as const;
const LINES: LineSet = { ...SCREEN_LINES, px: 0.7, strap: 2.25, cloth: 3 };

/** The side view for a narrow page: the drawing on top, its figures in two columns beneath. */
export function berthCompact(facts: BerthFacts, options: SideOptions): BerthDrawing {
  const frame = compactFrame(facts, options.widthPx);
  const bottom = onPaper(frame, [0, groundRangeM(facts.berth.hang)[0]])[1];
  const top = bottom + 26;
  const below = options.figures ? beneath(facts, frame, top, options) : spanAlone(facts, frame, top, options);
  const items = [
    ...sideFigure(facts, frame, true),
    ...levelLine(facts, frame),
    ...(options.pulls ? pullArrows(facts, frame) : []),
    ...headings(facts, frame, options),
    ...marksAt(facts, frame, "head"),
    ...marksAt(facts, frame, "foot"),
    ...lowPoint(facts, frame),
    ...below.items,
  ];
  return { items, height: Math.ceil(below.height) };
}

function compactFrame({ berth }: BerthFacts, widthPx: number): SideFrame {
  const scale = (widthPx - 2 * SIDE) / berth.spanM;
  const topZM = Math.max(highestStrapM(berth.hang) + 0.5, (ridgeTopM(berth) ?? 0) + 0.25);
  return {
    scale,
    originX: SIDE,
    originY: TOP + topZM * scale,
    lines: LINES,
    topZM,
    leftX: 0,
    rightX: widthPx,
  };
}

/** HEAD and FOOT over their trees; a tag alone where tag, species and trunk are too long. */
function headings({ head, foot }: BerthFacts, frame: SideFrame, { widthPx, words }: SideOptions): Item[] {
  const room = widthPx / 2 - 20;
  const over = (
    end: EndFacts,
    x: number,
    anchor: "start" | "end",
    key: "berth.head" | "berth.foot",
  ): Item[] => {
    const whole = treeText(end);
    const fits = !end.dbhAssumed && words.measure(words.labels(whole), TYPE.note, 500) <= room;
    return [
      text(word(key), [x, 22], { size: TYPE.body, weight: 700, anchor }),
      text(fits ? whole : name(end.tag), [x, 43], {
        size: TYPE.note,
        anchor,
        fill: "soft",
        maxWidth: room,
      }),
    ];
  };
  return [...over(head, 14, "start", "berth.head"), ...over(foot, frame.rightX - 14, "end", "berth.foot")];
}

/** Strap height and its range, outside the trunk. */
function marksAt(facts: BerthFacts, frame: SideFrame, end: End): Item[] {
  const { hang, spanM, groundKnown } = facts.berth;
  if (end === "foot" && !groundKnown) return [];
  const atHead = end === "head";
  const strap = hang[end];
  const [centre, base] = onPaper(frame, atHead ? [0, 0] : [spanM, hang.shape.groundFootZM]);
  const out = atHead ? -1 : 1;
  const yOf = (heightM: number): number => base - heightM * frame.scale;
  const x = atHead ? 24 : frame.rightX - 24;
  const middle = (yOf(strap.strapHeightM) + base) / 2 + 10;
  const key: HangQuantity = `${end}.strapHeightM`;
  const range = hang.ok[key];
  const unsure = hang.band[key];
  const bark = centre + out * (facts[end].dbhM / 2) * frame.scale;
  const band =
    range === undefined
      ? []
      : [
          okBand({
            x: atHead ? bark - 13 - BAND_WIDTH : bark + 13,
            towards: atHead ? 1 : -1,
            range,
            planned: strap.strapHeightM,
            yOf,
            ...(unsure === undefined ? {} : { unsure }),
          }),
        ];
  return [
    ...band,
    dimension([x, yOf(strap.strapHeightM)], [x, middle - 20], DIM),
    dimension([x, middle + 7], [x, base], DIM),
    text(markText(toldHeightM(facts.berth, end)), [atHead ? 6 : frame.rightX - 6, middle], {
      size: TYPE.note,
      weight: 700,
      anchor: atHead ? "start" : "end",
      halo: "paper",
    }),
  ];
}

function levelLine({ berth }: BerthFacts, frame: SideFrame): Item[] {
  const [, y] = onPaper(frame, berth.hang.shape.headAnchor);
  const [from, to] = [onPaper(frame, [0.1, 0])[0], onPaper(frame, [berth.spanM + 0.1, 0])[0]];
  return [
    line(
      [
        [from, y],
        [to, y],
      ],
      { class: "ns-level", stroke: "rule", width: 1.25, dash: [7, 3, 1.5, 3], cap: "butt" },
    ),
  ];
}

function pullArrows({ berth }: BerthFacts, frame: SideFrame): Item[] {
  const { shape, head, foot } = berth.hang;
  const ends = [
    { pullN: head.pullN, from: onPaper(frame, shape.headAnchor), to: onPaper(frame, shape.headGather) },
    { pullN: foot.pullN, from: onPaper(frame, shape.footAnchor), to: onPaper(frame, shape.footGather) },
  ];
  const perCm = newtonsPerCm(
    ends.map(({ pullN, from, to }) => ({ pullN, roomPx: 0.86 * distance(from, to) })),
  );
  return ends.map(({ pullN, from, to }) => pullArrow(from, to, pullN, perCm, 4));
}

function lowPoint({ berth }: BerthFacts, frame: SideFrame): Item[] {
  const { shape } = berth.hang;
  const at = lowest(shape.cloth);
  const [x, y] = onPaper(frame, at);
  const [, base] = onPaper(frame, [at[0], (shape.groundFootZM * at[0]) / berth.spanM]);
  return [dimension([x, y + 2], [x, base], DIM)];
}

interface Column {
  readonly item: TextItem;
  readonly size: number;
  readonly weight: 400 | 500 | 600 | 700;
  readonly soft?: true;
}

/** Low point, span, then HEAD and FOOT side by side. */
function beneath(facts: BerthFacts, frame: SideFrame, top: number, options: SideOptions): BerthDrawing {
  const { words, widthPx } = options;
  const { hang, groundKnown } = facts.berth;
  const span = spanLine(facts, frame, top + 8, options);
  const low = quantity("short-length", hang.lowPointM, 0);
  const seat = quantity("short-length", hang.seatHeightM, 0);
  const notes: TextItem[] = [
    word("berth.low-and-seat", { low, seat }),
    levelText(facts, "long"),
    ...tarpRidgeTexts(facts),
    ...windowTexts(facts),
    ...(groundKnown ? [] : [word("berth.ground-unknown")]),
    ...(facts.head.dbhAssumed
      ? [word("berth.trunks-assumed", { trunk: quantity("diameter", facts.head.dbhM, 0) })]
      : []),
  ];
  const rest = notes.map((item, index) =>
    text(item, [widthPx / 2, top + 56 + index * 23], {
      size: TYPE.note,
      anchor: "middle",
      weight: index === 1 ? 600 : 500,
      fill: index > 1 ? "soft" : "ink",
      maxWidth: widthPx - 16,
    }),
  );
  const tableTop = top + 52 + notes.length * 23;
  const columns = (["head", "foot"] as const).map((end, index) =>
    column(
      columnOf(facts, end, options.pulls),
      [14 + (index * widthPx) / 2, tableTop + 24],
      widthPx / 2 - 24,
      words,
    ),
  );
  const bottom = Math.max(...columns.map(({ height }) => height));
  const rule = line(
    [
      [14, tableTop],
      [widthPx - 14, tableTop],
    ],
    { stroke: "ink", width: 1.5 },
  );
  return { items: [...span, ...rest, rule, ...columns.flatMap(({ items }) => items)], height: bottom + 16 };
}

function columnOf(facts: BerthFacts, end: End, pulls: boolean): Column[] {
  const { hang, groundKnown } = facts.berth;
  const strap = hang[end];
  const range = hang.ok[`${end}.strapHeightM`];
  const known = end === "head" || groundKnown;
  const unsure = hang.band[`${end}.strapHeightM`];
  const mark = word("berth.mark", {
    height: markText(toldHeightM(facts.berth, end)),
    mark: bodyMarkText(toldHeightM(facts.berth, end), facts.setter.statureM),
  });
  return [
    { item: word(end === "head" ? "berth.head" : "berth.foot"), size: TYPE.note, weight: 700 },
    { item: known ? mark : levelText(facts, "short"), size: TYPE.body, weight: 700 },
    ...(known && range !== undefined
      ? [
          { item: rangeText(range), size: TYPE.note, weight: 600 } as const,
          {
            item: word("berth.above", { limit: limitText(range.bindsHigh) }),
            size: TYPE.note,
            weight: 500,
          } as const,
          {
            item: word("berth.below", { limit: limitText(range.bindsLow) }),
            size: TYPE.note,
            weight: 500,
          } as const,
        ]
      : []),
    ...(unsure === undefined || !known
      ? []
      : [{ item: aboutText(unsure), size: TYPE.note, weight: 500, soft: true } as const]),
    ...(facts.setter.id === facts.sleeper.id
      ? []
      : [{ item: setByText(facts), size: TYPE.note, weight: 600 } as const]),
    ...(pulls
      ? [
          { item: pullText(strap.pullN), size: TYPE.note, weight: 600 } as const,
          { item: newtonText(strap.pullN), size: TYPE.note, weight: 500, soft: true } as const,
        ]
      : []),
  ];
}

function rangeText({ low, high }: OkRange): TextItem {
  return word("berth.range", { low: quantity("length", low, 2), high: quantity("length", high, 2) });
}

function column(rows: readonly Column[], [x, top]: XY, width: number, words: Words): BerthDrawing {
  let y = top;
  const items = rows.flatMap(({ item, size, weight, soft }) => {
    const set = wrapped(
      item,
      [x, y],
      { size, weight, width, leading: size + 5, fill: soft ? "soft" : "ink" },
      words,
    );
    y = set.bottom + size + 8;
    return set.items;
  });
  return { items, height: y - 18 };
}

/** Spans that serve, and what ends them. */
function windowTexts({ berth }: BerthFacts): TextItem[] {
  if (berth.spanWindow === undefined) return [];
  const { low, high, bindsLow, bindsHigh } = berth.spanWindow;
  return [
    word("berth.window-range", { low: quantity("length", low, 2), high: quantity("length", high, 2) }),
    word("list.dots", {
      first: word("berth.nearer", { limit: limitText(bindsLow) }),
      rest: word("berth.farther", { limit: limitText(bindsHigh) }),
    }),
  ];
}

function spanAlone(facts: BerthFacts, frame: SideFrame, top: number, options: SideOptions): BerthDrawing {
  return { items: spanLine(facts, frame, top + 8, options), height: top + 40 };
}

function spanLine(facts: BerthFacts, frame: SideFrame, y: number, { words, widthPx }: SideOptions): Item[] {
  const { shape } = facts.berth.hang;
  const [left, right] = [onPaper(frame, shape.headAnchor)[0], onPaper(frame, shape.footAnchor)[0]];
  const middle = (left + right) / 2;
  const room = 2 * Math.min(middle - 4, widthPx - 4 - middle);
  const lengths = (["long", "short", "bare"] as const).map((length) => spanText(facts, length));
  const said = lengths.find((one) => words.measure(words.labels(one), TYPE.note, 700) <= room);
  return [
    dimension([left, y], [right, y], DIM),
    text(said ?? spanText(facts, "bare"), [middle, y + 24], {
      size: TYPE.note,
      weight: 700,
      anchor: "middle",
    }),
  ];
}

function distance(a: XY, b: XY): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
