import type { Camp, Plan } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { circle } from "../scene/shapes.ts";
import type { LabelPlace } from "./label-placement.ts";
import type { LabelWish } from "./map-labels.ts";
import type { MapView } from "./map-view.ts";
import type { PlacedBerth } from "./placed-berths.ts";

/** The reach of one group: the leader's berth that has most of the group near it. */
export interface GroupReach {
  readonly id: string;
  readonly at: XY;
  readonly r: number;
  readonly withinM: number;
}

/** More circles than this hide the berths. */
const MOST_GROUPS = 8;

/** Where each group with a leader who has a berth may lie; nothing where there are too many to see. */
export function groupReaches(
  plan: Plan,
  camp: Camp,
  berths: readonly PlacedBerth[],
  view: MapView,
): GroupReach[] {
  if (camp.groups.length > MOST_GROUPS) return [];
  const people = new Map(camp.sleepers.map((sleeper) => [sleeper.id, sleeper]));
  const sleeperOf = new Map(plan.berths.map(({ id, sleeper }) => [id, people.get(sleeper)]));
  return camp.groups.flatMap(({ id, withinM }): GroupReach[] => {
    if (!Number.isFinite(withinM)) return [];
    const own = berths.flatMap(({ berth, middle }) => {
      const sleeper = sleeperOf.get(berth.id);
      return sleeper?.group === id ? [{ middle, leads: sleeper.leads }] : [];
    });
    const r = withinM * view.pxPerM;
    const near = (at: XY): number =>
      own.filter(({ middle: [x, y] }) => Math.hypot(x - at[0], y - at[1]) <= r).length;
    const hubs = own.filter(({ leads }) => leads).sort((a, b) => near(b.middle) - near(a.middle));
    const at = hubs[0]?.middle;
    return at === undefined ? [] : [{ id, at, r, withinM }];
  });
}

/** A line of long and short dashes round what a leader can call. */
export function groupCircles(reaches: readonly GroupReach[]): Item[] {
  return reaches.map(({ id, at, r }) =>
    circle(at, r, { ...GROUP_LINE, class: "ns-group-reach", ref: `group/${id}` }),
  );
}

export const GROUP_LINE = {
  fill: "none",
  stroke: "ink",
  width: 1.25,
  dash: [16, 4, 3, 4],
  cap: "butt",
} as const;

/** The group and its reach in words, where its line is on the paper and outside every hazard. */
export function groupLabels(reaches: readonly GroupReach[], hazards: readonly Rim[]): LabelWish[] {
  const clear = ({ at: [x, y] }: LabelPlace): boolean =>
    hazards.every(({ at, r }) => Math.hypot(at[0] - x, at[1] - y) > r + HALF_LABEL);
  return reaches.map(({ id, at: [x, y], r, withinM }) => ({
    item: word("map.group", { group: name(id), within: quantity("length", withinM, 0) }),
    size: TYPE.note,
    weight: 600,
    fill: "ink",
    places: TURNS.map((turn): LabelPlace => {
      const along = (turn * Math.PI) / 180;
      return { at: [x + r * Math.sin(along), y - r * Math.cos(along) + 5], anchor: "middle" };
    }).filter(clear),
    needed: false,
    class: "ns-group-words",
    ref: `group/${id}`,
  }));
}

interface Rim {
  readonly at: XY;
  readonly r: number;
}

/** Half the width of such a label, about [px]. */
const HALF_LABEL = 60;

/** Round the circle, the top first [°]. */
const TURNS = [0, 20, -20, 40, -40, 60, -60, 90, -90, 120, -120, 150, -150, 180];
