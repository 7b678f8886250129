import type { Bottleneck, Camp, Plan } from "@nightspan/core";
import { allLookedAtText } from "../card/card-words.ts";
import { LINE, TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { box, circle, group, stroke } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import { knotLabels, limitBoxes, knotLines, limitMarks } from "./bottleneck-marks.ts";
import { groupCircles, groupLabels, groupReaches, type GroupReach } from "./group-reach.ts";
import { berthMarks } from "./berth-marks.ts";
import { placedBerths, type PlacedBerth } from "./placed-berths.ts";
import { furniture } from "./furniture.ts";
import { formLines } from "./ground-lines.ts";
import { groundPlan, type GroundPlan } from "./ground-plan.ts";
import type { MapTree } from "./map-tree.ts";
import { dropCircles, hazardLabels, hazardRims } from "./hazard-marks.ts";
import { refusedPair } from "./hazard-symbols.ts";
import { boxAround, boxesAlong, boxesRound, placesRound, TakenBoxes, type Box } from "./label-placement.ts";
import { legend, type Legend, type LegendKey } from "./legend.ts";
import { placeLabels, type LabelWish } from "./map-labels.ts";
import { refusedPairs, type TreePair } from "./refused-pairs.ts";
import { detailOf, inView, mapView, toPx, type MapView, type ViewWish } from "./map-view.ts";
import { slopeMark } from "./slope-mark.ts";
import { obstacleSymbol, shapePoints } from "./obstacle-symbols.ts";
import { sign, SIGN_SIZE, type SignKind } from "./signs.ts";
import { neededRadius, neededSymbol, stemRadius, stems } from "./tree-symbols.ts";

export interface MapOptions extends ViewWish {
  readonly words: Words;
  /** Id of the berth that is picked out. */
  readonly selected?: string;
  /** The reader's own step [m], for the scale. */
  readonly stepM?: number;
  /** Pairs that will not do and are worth showing, by tree ids; where silent, those that the plan itself names. */
  readonly refused?: readonly (readonly [string, string])[];
  /** False leaves out the legend and who looked, for a page that has its own. */
  readonly legend?: boolean;
  /** False leaves out the sleepers' names, for a sheet that lists them. */
  readonly names?: boolean;
  /** False leaves out who looked at the trees, for a sheet that says it beside the verdict. */
  readonly lookedAt?: boolean;
  /** False leaves out what limits how many have a berth, where the plan says what does. */
  readonly limits?: boolean;
  /** False leaves out how far from their leader a group may lie. */
  readonly groups?: boolean;
}

/** A map, and where on it the ground lies: for a page that turns a press into a place. */
export interface MapScene extends Scene {
  readonly view: MapView;
}

type Stem = MapTree & { readonly px: XY; readonly r: number };

interface Sheet {
  readonly plan: Plan;
  readonly camp: Camp;
  readonly options: MapOptions;
  readonly ground: GroundPlan;
  readonly view: MapView;
  readonly stems: readonly Stem[];
  readonly berths: readonly PlacedBerth[];
  /** Ids of trees that carry a berth. */
  readonly carrying: ReadonlySet<string>;
  readonly refused: readonly TreePair[];
  readonly bottleneck?: Bottleneck;
  readonly reaches: readonly GroupReach[];
}

/**
 * The camp from above: every stem by what is known of it, what may fall and what to keep off, and the berths.
 *
 * Units    metres in, pixels out; to scale, apart from a sketch of pairs that nobody has surveyed
 */
export function mapScene(plan: Plan, camp: Camp, options: MapOptions): MapScene {
  const sheet = laidOut(plan, camp, options);
  const { view, ground } = sheet;
  const marks = berthMarks(sheet.berths, camp, view, options.selected);
  const frame = furniture(
    camp,
    view,
    { ...options, sketch: ground.sketch, northKnown: ground.northKnown },
    options.words,
  );
  const signs = signMarks(camp, view);
  const limits = limitsOf(sheet);
  const always = takenBoxes(sheet, [
    ...marks.boxes,
    ...signs.map(({ at }) => boxAround(at, 16, 14)),
    frame.box,
    ...limits.boxes,
  ]);
  const ifPossible = softBoxes(sheet, marks.edges);
  const fall = slopeMark(ground, camp, view, { always, ifPossible });
  const wishes = [
    ...hazardLabels(ground, camp, view),
    ...fall.labels,
    ...tagLabels(sheet),
    ...limits.labels,
    ...groupLabels(sheet.reaches, hazardRims(ground, camp, view)),
    ...signs.map(({ label }) => label),
    ...nameLabels(sheet),
  ];
  const paper = boxAround([view.widthPx / 2, view.heightPx / 2], view.widthPx / 2 - 4, view.heightPx / 2 - 4);
  const labels = placeLabels(wishes, { always, ifPossible }, paper, options.words);
  const lines = ground.sketch ? undefined : formLines(camp, view);
  const items = [
    ...(lines === undefined ? [] : [lines]),
    ...dropCircles(ground, camp, view),
    ...obstacleMarks(sheet),
    ...fall.items,
    ...groupCircles(sheet.reaches),
    ...limits.lines,
    ...marks.tarps,
    ...errorRings(sheet),
    ...marks.bodies,
    group(stems(sheet.stems), { class: "ns-stems" }),
    ...neededMarks(sheet),
    ...refusedMarks(sheet),
    ...limits.marks,
    ...marks.plates,
    ...signs.map(({ item }) => item),
    group(labels, { class: "ns-labels" }),
    ...frame.items,
  ];
  return { ...wordsOf(sheet), ...withLegend(items, sheet), view };
}

function laidOut(plan: Plan, camp: Camp, options: MapOptions): Sheet {
  const ground = groundPlan(plan, camp);
  const view = mapView(ground, camp, options);
  const placed = ground.trees.map((tree) => ({
    ...tree,
    px: toPx(view, tree.at),
    r: stemRadius(tree.state, tree.dbhM, view.pxPerM),
  }));
  const visible = placed.filter(({ px, r }) => inView(view, px, r + 12));
  const carrying = new Set(ground.berths.flatMap(({ head, foot }) => [head.id, foot.id]));
  const berths = placedBerths(ground, view);
  const refused = options.refused ?? refusedPairs(plan);
  const reaches = options.groups === false ? [] : groupReaches(plan, camp, berths, view);
  const { bottleneck } = plan;
  const limits = options.limits === false || bottleneck === undefined ? {} : { bottleneck };
  return { plan, camp, options, ground, view, stems: visible, berths, carrying, refused, reaches, ...limits };
}

function wordsOf({ plan, camp }: Sheet): Pick<Scene, "name" | "title" | "desc"> {
  const { done, of } = plan.treesLookedAt;
  return {
    name: "map",
    title: word("map.title", { camp: name(camp.name) }),
    desc: word(plan.placed === 1 ? "map.desc-one" : "map.desc", {
      placed: quantity("count", plan.placed, 0),
      verdict: word(`verdict.${plan.verdict}`),
      done: quantity("count", done, 0),
      of: quantity("count", of, 0),
    }),
  };
}

function withLegend(items: readonly Item[], sheet: Sheet): Pick<Scene, "size" | "items" | "ground"> {
  const { view, options } = sheet;
  const size = { width: view.widthPx, height: view.heightPx, unit: "px" } as const;
  if (options.legend === false) return { size, items, ground: "wood" };
  const drawn = legend(present(sheet), [14, view.heightPx + 8], view.widthPx - 28, options.words);
  const looked = lookedLine(sheet, view.heightPx + drawn.height + 26);
  const below = drawn.height + 16 + looked.height;
  const strip = [
    box([0, view.heightPx], view.widthPx, below, { fill: "paper" }),
    stroke([0, view.heightPx, view.widthPx, view.heightPx], { stroke: "ink", width: 1.5 }),
  ];
  return {
    size: { ...size, height: view.heightPx + below },
    items: [...items, ...strip, ...drawn.items, ...looked.items],
    ground: "wood",
  };
}

/** How many trees were looked at, by whom and when. */
function lookedLine({ plan, camp, view, options }: Sheet, y: number): Legend {
  if (options.lookedAt === false || plan.treesLookedAt.of === 0) return { items: [], height: 0 };
  const style = { size: TYPE.note, weight: 600, width: view.widthPx - 28, leading: 20 } as const;
  const set = wrapped(allLookedAtText(plan, camp), [14, y], style, options.words);
  return { items: set.items, height: set.lines * 20 + 6 };
}

function present({
  stems,
  ground,
  camp,
  view,
  carrying,
  refused,
  bottleneck,
  reaches,
}: Sheet): Set<LegendKey> {
  const keys = new Set<LegendKey>(stems.map(({ state }) => state));
  if (stems.some(({ id, state }) => carrying.has(id) && state === "not-looked-at")) keys.add("needed");
  if (ground.berths.length > 0 && detailOf(view) !== "plate") keys.add("head").add("feet");
  if (ground.berths.length > 0 && detailOf(view) === "leaf") keys.add("tarp");
  if (refused.length > 0) keys.add("refused");
  if (ground.berths.some(({ spare }) => spare === true)) keys.add("spare");
  if (bottleneck !== undefined) keys.add("limits");
  if (bottleneck?.knots.some(({ pairs, most }) => pairs.length > most) === true) keys.add("knot");
  if (reaches.length > 0) keys.add("group");
  const hung = (camp.ground?.obstacles ?? []).some(({ kind }) => kind === "overhead");
  if (hung) keys.add("limb");
  if (hung || keys.has("dead")) keys.add("drop-circle");
  if (unsure(camp)) keys.add("unsure");
  if (detailOf(view) !== "leaf") for (const [kind] of spotsOf(camp)) keys.add(kind);
  return keys;
}

/** What limits how many have a berth: lines under the berths, marks over the stems, words among the labels. */
function limitsOf({ bottleneck, stems, carrying }: Sheet) {
  if (bottleneck === undefined) return { lines: [], marks: [], labels: [], boxes: [] };
  const places = new Map(
    stems.map(({ id, px, r, state }) => {
      const needed = carrying.has(id) && state === "not-looked-at";
      return [id, { px, r: needed ? neededRadius(r) : r }];
    }),
  );
  return {
    lines: knotLines(bottleneck, places),
    marks: limitMarks(bottleneck, places),
    labels: knotLabels(bottleneck, places),
    boxes: limitBoxes(bottleneck, places),
  };
}

function unsure(camp: Camp): boolean {
  return camp.ground?.source === "gps";
}

function takenBoxes({ stems, view }: Sheet, boxes: readonly Box[]): TakenBoxes {
  const taken = new TakenBoxes(40);
  for (const one of boxes) taken.take(one);
  if (detailOf(view) !== "plate") for (const { px, r } of stems) taken.take(boxAround(px, r + 1));
  return taken;
}

/** Rims, edges, paths and water: labels cross them only where there is no other room. */
function softBoxes({ ground, camp, view }: Sheet, edges: readonly (readonly XY[])[]): TakenBoxes {
  const taken = new TakenBoxes(40);
  const boxes = [
    ...edges.flatMap((edge) => boxesAlong(edge, true)),
    ...hazardRims(ground, camp, view).flatMap(({ at, r }) => boxesRound(at, r)),
    ...(camp.ground?.obstacles ?? [])
      .filter(({ shape }) => shape.type !== "point")
      .flatMap((obstacle) => {
        const points = shapePoints(obstacle).map((point) => toPx(view, point));
        return boxesAlong(points, obstacle.shape.type === "polygon");
      }),
  ];
  for (const box of boxes) taken.take(box);
  return taken;
}

function obstacleMarks({ camp, view, stems }: Sheet): Item[] {
  const places = stems.map(({ px }) => px);
  return (camp.ground?.obstacles ?? []).map((obstacle) => obstacleSymbol(obstacle, view, places));
}

function neededMarks({ stems, carrying }: Sheet): Item[] {
  return stems
    .filter(({ id, state }) => carrying.has(id) && state === "not-looked-at")
    .map(({ id, px, r }) => neededSymbol(px, r, `tree/${id}`));
}

/** A thin ring of the position's error round each tree that carries a berth. */
function errorRings({ camp, stems, carrying, view }: Sheet): Item[] {
  if (!unsure(camp)) return [];
  const r = (camp.ground?.positionErrorM ?? 0) * view.pxPerM;
  return stems
    .filter(({ id }) => carrying.has(id))
    .map(({ px }) => circle(px, r, { class: "ns-unsure", fill: "none", stroke: "ink", width: LINE.form }));
}

function refusedMarks({ refused, stems }: Sheet): Item[] {
  const byId = new Map(stems.map((stem) => [stem.id, stem.px]));
  return refused.flatMap(([first, second]) => {
    const [from, to] = [byId.get(first), byId.get(second)];
    return from === undefined || to === undefined ? [] : [refusedPair(from, to)];
  });
}

function signMarks(
  camp: Camp,
  view: MapView,
): { readonly at: XY; readonly item: Item; readonly label: LabelWish }[] {
  return spotsOf(camp).flatMap(([kind, where]) => {
    const at = toPx(view, where);
    if (!inView(view, at, 0)) return [];
    const label: LabelWish = {
      item: word(`map.${kind}`),
      size: TYPE.note + 1,
      weight: 600,
      fill: "ink",
      places: placesRound(at, SIGN_SIZE / 2 + 6, TYPE.note + 1),
      needed: false,
      class: "ns-sign-name",
    };
    return [{ at, item: sign(kind, at), label }];
  });
}

/** The spots of the camp whose place is known. */
function spotsOf({ ground }: Camp): (readonly [SignKind, XY])[] {
  const spots = { meet: ground?.meetingPoint, muster: ground?.muster, fallback: ground?.fallback } as const;
  const kinds: readonly SignKind[] = ["meet", "muster", "fallback"];
  return kinds.flatMap((kind): (readonly [SignKind, XY])[] => {
    const at = spots[kind]?.at;
    return at === undefined ? [] : [[kind, at]];
  });
}

/** Tags of the trees that carry berths, and a question mark at each doubtful one. */
function tagLabels({ stems, carrying, view }: Sheet): LabelWish[] {
  if (detailOf(view) === "plate") return [];
  return stems.flatMap((stem): LabelWish[] => {
    const needed = carrying.has(stem.id);
    if (!needed && stem.state !== "doubtful") return [];
    const away = (needed && stem.state === "not-looked-at" ? 14 : stem.r) + 5;
    return [
      {
        item: needed ? name(stem.tag) : word("map.question"),
        size: TYPE.note,
        weight: 700,
        fill: "ink",
        places: placesRound(stem.px, away, TYPE.note),
        needed: false,
        class: needed ? "ns-tag" : "ns-question",
        ref: `tree/${stem.id}`,
      },
    ];
  });
}

function nameLabels({ berths, view, options }: Sheet): LabelWish[] {
  if (options.names === false || detailOf(view) === "plate") return [];
  const size = view.widthPx >= 700 ? TYPE.body : TYPE.note;
  const owned = berths.filter(({ berth }) => berth.spare !== true);
  return owned.map(({ berth, middle }) => ({
    item: name(berth.sleeper),
    size,
    weight: 600,
    fill: "ink",
    places: [1.15, 1.45, 1.8].flatMap((reach) => {
      const [below, above, beside] = placesRound(middle, Math.max(20, reach * view.pxPerM), size)
        .slice(0, 4)
        .reverse();
      return [above, below, beside].filter((place) => place !== undefined);
    }),
    needed: false,
    class: "ns-name",
    ref: `berth/${berth.id}`,
  }));
}
