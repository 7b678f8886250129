import { degrees, handMarks, inDegrees, type AsHung, type Camp, type PlannedBerth } from "@nightspan/core";

/** What somebody can tell on the spot: how the sit was, one of a few answers, or a number. */
export type SpotThing = "sit" | ChoiceThing | NumberThing;

export type ChoiceThing = "slides" | "knees" | "ridgeline";
export type NumberThing =
  "seat" | "steps" | "tape" | "head-height" | "foot-height" | "head-angle" | "foot-angle" | "foot-raise";

/** Without a tape, without anybody else. */
export const TOLD_ALONE: readonly SpotThing[] = ["seat", "slides", "knees", "ridgeline", "steps"];

/** With a tape and somebody who measures while the sleeper lies. */
export const TOLD_WITH_HELP: readonly SpotThing[] = [
  "head-height",
  "foot-height",
  "head-angle",
  "foot-angle",
  "foot-raise",
  "seat",
  "tape",
];

/** The answers of each choice, by the key of their words. */
export const CHOICES = {
  slides: { "to-foot": { slides: "to-foot" }, "to-head": { slides: "to-head" }, no: { slides: "no" } },
  knees: { strained: { knees: "strained" }, easy: { knees: "easy" } },
  ridgeline: { slack: { ridgeline: "slack" }, bends: { ridgeline: "bends" }, tight: { ridgeline: "tight" } },
} as const satisfies Readonly<Record<ChoiceThing, Readonly<Record<string, AsHung>>>>;

export function isChoice(thing: SpotThing): thing is ChoiceThing {
  return Object.hasOwn(CHOICES, thing);
}

/** The berth that is looked at, and the step of who sleeps there [m]. */
export interface SpotPlace {
  readonly berth: PlannedBerth;
  readonly stepM: number;
}

export function spotPlace(camp: Camp, berth: PlannedBerth): SpotPlace {
  const stepM = camp.sleepers.find(({ id }) => id === berth.sleeper)?.stepM ?? 0.7;
  return { berth, stepM };
}

/** Whether a thing can be told at this berth at all. */
export function canBeTold(thing: SpotThing, { berth }: SpotPlace): boolean {
  return thing !== "ridgeline" || berth.hang.ridgelineM !== undefined;
}

export interface NumberKind {
  readonly unit: "cm" | "degrees" | "steps";
  readonly by: number;
  readonly least: number;
  readonly most: number;
  /** As planned, which is where the counting starts. */
  readonly start: (place: SpotPlace) => number;
  readonly found: (value: number, place: SpotPlace) => AsHung;
}

const HEIGHT = { unit: "cm", by: 5, least: 20, most: 350 } as const;
const SLOPE = { unit: "degrees", by: 1, least: 0, most: 80 } as const;

export const NUMBERS: Readonly<Record<NumberThing, NumberKind>> = {
  seat: {
    ...HEIGHT,
    least: 0,
    most: 200,
    start: ({ berth }) => toFive(berth.hang.seatHeightM * 100),
    found: (cm) => ({ seatHeightM: cm / 100 }),
  },
  /**
   * Steps are counted to the half, far coarser than a tape. So only a count other than the planned one says
   * anything, and it says by how much the span differs.
   */
  steps: {
    unit: "steps",
    by: 0.5,
    least: 1,
    most: 30,
    start: plannedSteps,
    found: (count, place) => {
      const more = count - plannedSteps(place);
      return more === 0 ? {} : { spanM: place.berth.spanM + more * place.stepM };
    },
  },
  tape: {
    ...HEIGHT,
    least: 100,
    most: 1500,
    start: ({ berth }) => toFive(berth.spanM * 100),
    found: (cm) => ({ spanM: cm / 100 }),
  },
  "head-height": {
    ...HEIGHT,
    start: ({ berth }) => toFive(handMarks(berth).headHeightM * 100),
    found: (cm) => ({ head: { strapHeightM: cm / 100 } }),
  },
  "foot-height": {
    ...HEIGHT,
    start: ({ berth }) => toFive(handMarks(berth).footHeightM * 100),
    found: (cm) => ({ foot: { strapHeightM: cm / 100 } }),
  },
  "head-angle": {
    ...SLOPE,
    start: ({ berth }) => Math.round(inDegrees(berth.hang.head.angle)),
    found: (value) => ({ head: { angle: degrees(value) } }),
  },
  "foot-angle": {
    ...SLOPE,
    start: ({ berth }) => Math.round(inDegrees(berth.hang.foot.angle)),
    found: (value) => ({ foot: { angle: degrees(value) } }),
  },
  "foot-raise": {
    ...HEIGHT,
    least: -50,
    most: 100,
    start: ({ berth }) => toFive(berth.hang.footRaiseM * 100),
    found: (cm) => ({ footRaiseM: cm / 100 }),
  },
};

/** Two findings together; what is told of one strap adds up. */
export function withFound(before: AsHung, next: AsHung): AsHung {
  const head = { ...before.head, ...next.head };
  const foot = { ...before.foot, ...next.foot };
  return {
    ...before,
    ...next,
    ...(Object.keys(head).length > 0 ? { head } : {}),
    ...(Object.keys(foot).length > 0 ? { foot } : {}),
  };
}

function toFive(cm: number): number {
  return Math.round(cm / 5) * 5;
}

function plannedSteps({ berth, stepM }: SpotPlace): number {
  return Math.round((berth.spanM / stepM) * 2) / 2;
}
