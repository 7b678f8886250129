import { handMarks, type BerthTarp, type Camp, type Plan, type PlannedBerth } from "@nightspan/core";
import { berthFacts, type BerthFacts } from "../berth/berth-facts.ts";
import { levelText, markHeightM, markText } from "../berth/berth-words.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { verdictPlateItem } from "../figure/verdict-plate.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene } from "../scene/scene.ts";
import { box, group, line, stroke, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import type { WordKey } from "../words/english.ts";
import { A4_WIDE } from "./card-size.ts";
import { youthLacksTexts } from "../warmth/youth-lacks.ts";
import { arriveText } from "./arrive-text.ts";
import { lowSide, sideText } from "./tarp-line.ts";
import { allLookedAtText, dotted, listed, notCheckedText } from "./card-words.ts";

const LEFT = 10;
const RIGHT = A4_WIDE.width - 10;
const ROW = 9;
const TABLE_TOP = 46;
const TABLE_BOTTOM = 176;
const ROWS_A_PAGE = Math.floor((TABLE_BOTTOM - TABLE_TOP) / ROW);

interface Column {
  readonly title: WordKey;
  readonly x: number;
  readonly anchor: "start" | "middle" | "end";
  readonly width: number;
}

const COLUMNS = {
  no: { title: "leaders.no", x: LEFT + 1.5, anchor: "start", width: 9 },
  name: { title: "leaders.name", x: LEFT + 13, anchor: "start", width: 43 },
  trees: { title: "leaders.trees", x: LEFT + 57, anchor: "start", width: 44 },
  steps: { title: "leaders.steps", x: LEFT + 110, anchor: "end", width: 12 },
  head: { title: "leaders.head", x: LEFT + 131, anchor: "end", width: 21 },
  foot: { title: "leaders.foot", x: LEFT + 164, anchor: "end", width: 32 },
  tarp: { title: "leaders.tarp", x: LEFT + 167, anchor: "start", width: 19 },
  kit: { title: "leaders.kit", x: LEFT + 187, anchor: "start", width: 42 },
  buddy: { title: "leaders.buddy", x: LEFT + 236, anchor: "middle", width: 12 },
  looked: { title: "leaders.looked", x: LEFT + 249, anchor: "middle", width: 13 },
  sat: { title: "leaders.sat", x: LEFT + 261, anchor: "middle", width: 10 },
  dusk: { title: "leaders.dusk", x: LEFT + 271.5, anchor: "middle", width: 10 },
} as const satisfies Readonly<Record<string, Column>>;

/** The leader's sheet: one table, a row a berth, nine millimetres a row; the head is repeated on each page. */
export function leadersSheetScenes(plan: Plan, camp: Camp, words: Words): Scene[] {
  const all = plan.berths.map(({ id }) => berthFacts(plan, camp, id));
  const berthOf: BerthOf = new Map(plan.berths.map(({ id, sleeper }) => [sleeper, id]));
  const first = told(youthLacksTexts(plan, camp), words);
  const onFirst = Math.max(1, Math.floor((TABLE_BOTTOM - TABLE_TOP - first.height) / ROW));
  const pages = 1 + Math.max(0, Math.ceil((all.length - onFirst) / ROWS_A_PAGE));
  return Array.from({ length: pages }, (_, page) => {
    const before = onFirst + (page - 1) * ROWS_A_PAGE;
    const rows = page === 0 ? all.slice(0, onFirst) : all.slice(before, before + ROWS_A_PAGE);
    const top = TABLE_TOP + (page === 0 ? first.height : 0);
    return {
      name: pages === 1 ? "leaders-sheet" : `leaders-sheet-${page + 1}`,
      size: A4_WIDE,
      title: word("leaders.title", { camp: name(camp.name) }),
      desc: word("leaders.desc"),
      ground: "paper",
      theme: "one-ink",
      items: [
        ...head(plan, camp, words),
        ...(page === 0 ? first.items : []),
        ...tableHead(top),
        ...rows.flatMap((facts, index) =>
          row(facts, top + index * ROW, (index + 1) % 3 === 0, berthOf, words),
        ),
        ...below(
          top + rows.length * ROW,
          page === pages - 1 ? unplacedText(plan, camp) : undefined,
          plan,
          words,
        ),
      ],
    };
  });
}

function head(plan: Plan, camp: Camp, words: Words): Item[] {
  const leaders = camp.sleepers.filter(({ leads }) => leads).map((leader) => name(leader.name));
  const facts: TextItem[] = [
    ...(camp.date === undefined ? [] : [{ day: camp.date, style: "with-weekday" } as const]),
    ...(leaders.length === 0 ? [] : [word("leaders.by", { names: listed(leaders) })]),
    word("leaders.placed", {
      placed: quantity("count", plan.placed, 0),
      asked: quantity("count", plan.asked, 0),
    }),
    allLookedAtText(plan, camp),
  ];
  const verdict = word(`verdict.${plan.verdict}`);
  const wide = words.measure(words.labels(verdict), TYPE_MM.head, 700);
  return [
    text(name(camp.name), [LEFT, 15.5], { size: TYPE_MM.name, weight: 700, maxWidth: 190 }),
    text(dotted(facts), [LEFT, 22], { size: TYPE_MM.body, weight: 500, maxWidth: RIGHT - LEFT }),
    verdictPlateItem(plan.verdict, [RIGHT - wide - 11, 13.5], 8.5),
    text(verdict, [RIGHT, 15.3], { size: TYPE_MM.head, weight: 700, anchor: "end" }),
    ...band(plan, camp, words),
  ];
}

/** Times and limits are short; a place may take a sentence. */
const BAND_SHARES = [0.2, 0.19, 0.23, 0.38] as const;

/** Stop lines and where to go, between two heavy rules: four cells, each in two lines at most. */
function band(plan: Plan, camp: Camp, words: Words): Item[] {
  const stop = camp.night?.stopGustMS;
  const fallback = camp.ground?.fallback?.note;
  const texts: TextItem[] = [
    arriveText(plan, camp),
    stop === undefined
      ? word("leaders.stop-blank")
      : word("leaders.stop-gust", { speed: quantity("count", stop, 0) }),
    word("leaders.thunder"),
    fallback === undefined
      ? word("leaders.fallback-none")
      : word("leaders.fallback", { where: name(fallback) }),
  ];
  let x = LEFT;
  const cells = texts.flatMap((item, index) => {
    const left = x;
    const width = (BAND_SHARES[index] ?? 0) * (RIGHT - LEFT);
    x += width;
    const style = {
      size: TYPE_MM.note,
      weight: 600,
      width: width - 4,
      leading: TYPE_MM.note * 1.2,
      mostLines: 2,
    } as const;
    const probe = wrapped(item, [0, 0], style, words);
    const y = probe.lines > 1 ? 29.3 : 31.2;
    return wrapped(item, [left, y], style, words).items;
  });
  return [heavy(25.6), ...cells, heavy(35)];
}

/** Children who lack a warm layer, before any table, and what height that takes. */
function told(texts: readonly TextItem[], words: Words): { readonly items: Item[]; readonly height: number } {
  const leading = TYPE_MM.body * 1.25;
  const style = { size: TYPE_MM.body, weight: 700, width: RIGHT - LEFT, leading } as const;
  const items: Item[] = [];
  let base = FIRST_BASE;
  for (const one of texts) {
    const set = wrapped(one, [LEFT, base], style, words);
    items.push(...set.items);
    base = set.bottom + leading;
  }
  return { items, height: base - FIRST_BASE };
}

/** Base line of what stands first below the band. */
const FIRST_BASE = 39.6;

function heavy(y: number): Item {
  return line(
    [
      [LEFT, y],
      [RIGHT, y],
    ],
    { stroke: "ink", width: 0.8, cap: "butt" },
  );
}

function tableHead(top: number): Item[] {
  const titles = Object.values(COLUMNS).map(({ title, x, anchor, width }) =>
    text(word(title), [x, top - 3.6], { size: TYPE_MM.note, weight: 600, anchor, maxWidth: width + 4 }),
  );
  return [
    ...titles,
    line(
      [
        [LEFT, top],
        [RIGHT, top],
      ],
      { stroke: "ink", width: 0.6, cap: "butt" },
    ),
  ];
}

function row(facts: BerthFacts, top: number, heavyRule: boolean, berthOf: BerthOf, words: Words): Item[] {
  const base = top + 6;
  const { berth, sleeper, steps } = facts;
  const cell = (column: Column, item: TextItem, weight: 500 | 700 = 500, size: number = TYPE_MM.body): Item =>
    text(item, [column.x, base], { size, weight, anchor: column.anchor, maxWidth: column.width });
  return [
    group([
      box([LEFT + 1.5, top + 1.6], 8, 5.8, { fill: "ink" }),
      text(name(berth.id), [LEFT + 5.5, base], {
        size: TYPE_MM.body,
        weight: 700,
        anchor: "middle",
        fill: "on-action",
      }),
    ]),
    ...nameCell(sleeper.name, base, words),
    ...treesCell(facts, base, words),
    ...(berth.verdict === "do-not-hang"
      ? [
          text(word("leaders.refused"), [COLUMNS.foot.x, base], {
            size: TYPE_MM.body,
            weight: 700,
            anchor: "end",
            maxWidth: COLUMNS.foot.x - COLUMNS.steps.x + COLUMNS.steps.width,
          }),
        ]
      : [
          cell(COLUMNS.steps, quantity("steps", steps, 1)),
          cell(COLUMNS.head, markText(handMarks(berth).headHeightM), 700, TYPE_MM.lead),
          cell(COLUMNS.foot, levelText(facts, "bare"), 700, TYPE_MM.lead),
        ]),
    ...kitCells(facts, base),
    buddyCell(berth, base, berthOf),
    ...[COLUMNS.looked, COLUMNS.sat, COLUMNS.dusk].map(({ x }) =>
      box([x - 2.75, top + 1.75], 5.5, 5.5, {
        fill: "none",
        stroke: "ink",
        width: 0.4,
        join: "miter",
        class: "ns-tick",
      }),
    ),
    line(
      [
        [LEFT, top + ROW],
        [RIGHT, top + ROW],
      ],
      { stroke: "ink", width: heavyRule ? 0.6 : 0.2, cap: "butt" },
    ),
  ];
}

/** A name that is too long for one line stands in two smaller ones. */
function nameCell(written: string, base: number, words: Words): readonly Item[] {
  const { x, width } = COLUMNS.name;
  const said = name(written);
  if (words.measure(words.labels(said), TYPE_MM.body, 700) <= width) {
    return [text(said, [x, base], { size: TYPE_MM.body, weight: 700 })];
  }
  const small = {
    size: TYPE_MM.note,
    weight: 700,
    width,
    leading: TYPE_MM.note * 1.1,
    mostLines: 2,
  } as const;
  const { lines } = wrapped(said, [0, 0], small, words);
  return wrapped(said, [x, base - (lines > 1 ? 2 : 0.3)], small, words).items;
}

/** Both tags, and which of the two wants somebody to look at it. */
function treesCell({ head, foot }: BerthFacts, base: number, words: Words): Item[] {
  const { x, width } = COLUMNS.trees;
  const unseen = [head, foot].filter(({ lookedAt }) => !lookedAt).map(({ tag }) => name(tag));
  const tags = word("leaders.tags", { head: name(head.tag), foot: name(foot.tag) });
  const look = word("leaders.look-at", { tag: listed(unseen) });
  const [plain, bold] = [
    { size: TYPE_MM.body, weight: 500 } as const,
    { size: TYPE_MM.body, weight: 700 } as const,
  ];
  if (unseen.length === 0) return [text(tags, [x, base], { ...plain, maxWidth: width })];
  const gap = { said: "\u00a0 " };
  const wide = (item: TextItem, weight: 500 | 700): number =>
    words.measure(words.labels(item), TYPE_MM.body, weight);
  if (wide(tags, 500) + wide(gap, 500) + wide(look, 700) <= width) {
    const runs = [
      { item: tags, ...plain },
      { item: gap, ...plain },
      { item: look, ...bold },
    ];
    return [{ kind: "text", at: [x, base], anchor: "start", fill: "ink", runs }];
  }
  const small = { size: TYPE_MM.note, maxWidth: width } as const;
  return [
    text(tags, [x, base - 2.2], { ...small, weight: 500 }),
    text(look, [x, base + 1.4], { ...small, weight: 700 }),
  ];
}

/** Number of the berth of a sleeper. */
type BerthOf = ReadonlyMap<string, string>;

/** The buddy's berth; a line to write on where nobody was named. */
function buddyCell({ buddy }: PlannedBerth, base: number, berthOf: BerthOf): Item {
  const { x, width } = COLUMNS.buddy;
  const number = buddy === undefined ? undefined : berthOf.get(buddy.sleeper);
  if (number === undefined || buddy === undefined) {
    return stroke([x - 4, base + 0.8, x + 4, base + 0.8], { stroke: "ink", width: 0.2, cap: "butt" });
  }
  const said = buddy.withinCall ? name(number) : word("leaders.buddy-far", { berth: name(number) });
  const size = buddy.withinCall ? TYPE_MM.body : TYPE_MM.note;
  return text(said, [x, base], { size, weight: 500, anchor: "middle", maxWidth: width });
}

/** Tarp with its ridge and low side, under and over with whether each is enough; by their ids where nobody computed. */
function kitCells({ berth }: BerthFacts, base: number): Item[] {
  const small = { size: TYPE_MM.note, weight: 500 } as const;
  const two = (column: Column, lines: readonly TextItem[]): Item[] =>
    lines.map((item, index) =>
      text(item, [column.x, base - (lines.length > 1 ? 1.9 - index * TYPE_MM.note * 1.1 : 0.3)], {
        ...small,
        maxWidth: column.width,
      }),
    );
  const { tarp, warmth, kit } = berth;
  const pitched = tarp === undefined ? [] : [tarpCell(tarp, berth)];
  const halves = (["under", "over"] as const).flatMap((half): TextItem[] => {
    const item = warmth?.[half].item ?? kit[half];
    if (warmth === undefined) return item === undefined ? [] : [name(item)];
    const enough = word(`warmth.${warmth[half].enough}`);
    return [
      word("verdict.about", {
        verdict: enough,
        about: item === undefined ? word("warmth.nothing") : name(item),
      }),
    ];
  });
  return [
    ...two(COLUMNS.tarp, [...(kit.tarp === undefined ? [] : [name(kit.tarp)]), ...pitched]),
    ...two(COLUMNS.kit, halves),
  ];
}

function tarpCell({ ridge, panels }: BerthTarp, berth: PlannedBerth): TextItem {
  const height = quantity("length", markHeightM(ridge.headTieM), 2);
  const low = lowSide(panels);
  if (low === undefined) return height;
  return word("leaders.tarp-low", { height, side: sideText(low, berth) });
}

/** Who has no berth, by name: they sleep on the ground. */
function unplacedText({ unplaced }: Plan, camp: Camp): TextItem | undefined {
  if (unplaced.length === 0) return undefined;
  const names = new Map(camp.sleepers.map(({ id, name: called }) => [id, called]));
  return word("leaders.unplaced", {
    names: listed(unplaced.map(({ sleeper }) => name(names.get(sleeper) ?? sleeper))),
  });
}

/** What was not checked, who has no berth, and a box for notes in what is left of the page. */
function below(bottom: number, unplaced: TextItem | undefined, plan: Plan, words: Words): Item[] {
  const under = bottom + 6.5;
  const bold = {
    size: TYPE_MM.note,
    weight: 700,
    width: RIGHT - LEFT,
    leading: TYPE_MM.note * 1.2,
    mostLines: 2,
  } as const;
  const left = unplaced === undefined ? undefined : wrapped(unplaced, [LEFT, under], bold, words);
  const y = left === undefined ? under : left.bottom + 5;
  const unchecked = notCheckedText(plan.notChecked);
  const said = word("leaders.foot-line");
  const note = { size: TYPE_MM.note, weight: 500, maxWidth: RIGHT - LEFT } as const;
  const first =
    unchecked === undefined
      ? said
      : word("card.looked-and-not-checked", { looked: unchecked, unchecked: said });
  const night = nightTexts(plan);
  const top = y + (night.length === 0 ? 4 : 8);
  const notes = [
    box([LEFT, top], RIGHT - LEFT, A4_WIDE.height - 8 - top, {
      fill: "none",
      stroke: "ink",
      width: 0.3,
      join: "miter",
    }),
    text(word("leaders.notes"), [LEFT + 3, top + 5.5], { size: TYPE_MM.note, weight: 600 }),
  ];
  return [
    ...(left?.items ?? []),
    text(first, [LEFT, y], note),
    ...(night.length === 0 ? [] : [text(dotted(night), [LEFT, y + 4], note)]),
    ...(A4_WIDE.height - 8 - top < 12 ? [] : notes),
  ];
}

/** Of whom under and over are told, and how many places are to be kept free. */
function nightTexts({ berths, dealing }: Plan): TextItem[] {
  const places = dealing?.groundPlaces ?? 0;
  return [
    ...(berths.some(({ warmth }) => warmth !== undefined) ? [word("leaders.warmth-for")] : []),
    ...(places === 0 ? [] : [word("sheet.ground-kept", { places: quantity("count", places, 0) })]),
  ];
}
