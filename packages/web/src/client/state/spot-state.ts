import type { AsHung, Followed, Instruction, Symptom } from "@nightspan/core";
import { withFound, type SpotThing } from "./spot-things.ts";

/** Where somebody is on the way from the first look to a hang that is left as it is. */
export interface SpotState {
  readonly page: "who" | "tell" | "bothers" | "measure" | "result" | "still";
  readonly helped: boolean;
  /** What is told each time, in this order, and which of it is asked now. */
  readonly asked: readonly SpotThing[];
  readonly at: number;
  /** A number other than the planned one, while it is counted. */
  readonly value?: number | undefined;
  /** What was found since the last move. */
  readonly found: AsHung;
  readonly followed: readonly Followed[];
  /** Moves that would not go. */
  readonly refused: readonly Move[];
  readonly symptom?: Symptom | undefined;
  /** How much of the advice for the symptom was tried. */
  readonly advised: number;
  /** Whether what was found is to be taken as it is, although it does not fit together. */
  readonly trusted: boolean;
}

export type Move = Pick<Instruction, "end" | "action">;

export const AT_FIRST: SpotState = {
  page: "who",
  helped: false,
  asked: [],
  at: 0,
  found: {},
  followed: [],
  refused: [],
  advised: 0,
  trusted: false,
};

/** How the first sit was. What is felt lying is a symptom, answered by more than the straps alone. */
export const SAT = {
  "too-low": (state) => told(state, { sits: "too-low" }),
  "too-high": (state) => told(state, { sits: "too-high" }),
  slides: (state) => bothered(state, "slides-to-foot"),
  knees: (state) => bothered(state, "calf-ridge"),
  well: (state) => told(state, { sits: "well", slides: "no" }),
} as const satisfies Readonly<Record<string, (state: SpotState) => SpotState>>;

export type Sat = keyof typeof SAT;

/** After the sit one answer is enough for a first move; it is asked again after each. */
export function afterTheSit(sat: Sat): SpotState {
  return SAT[sat]({ ...AT_FIRST, page: "measure", asked: ["sit"] });
}

export function tellAs(state: SpotState, helped: boolean): SpotState {
  return { ...state, page: "tell", helped, asked: [] };
}

/** Takes a thing into what is asked, or out of it, in the order of the list. */
export function toggled(state: SpotState, thing: SpotThing, order: readonly SpotThing[]): SpotState {
  const has = state.asked.includes(thing);
  return {
    ...state,
    asked: order.filter((one) => (one === thing ? !has : state.asked.includes(one))),
  };
}

export function measureNow(state: SpotState): SpotState {
  return { ...state, page: "measure", at: 0, value: undefined, found: {}, trusted: false };
}

export function counted(state: SpotState, value: number): SpotState {
  return { ...state, value };
}

/** Notes one finding and goes on to the next, or to what it all means. */
export function told(state: SpotState, found: AsHung): SpotState {
  const next = { ...state, value: undefined, found: withFound(state.found, found), at: state.at + 1 };
  return next.at < state.asked.length ? next : { ...next, page: "result" };
}

export function bothered(state: SpotState, symptom: Symptom): SpotState {
  return { ...state, page: "result", symptom, advised: 0 };
}

/** The move was made: what was found before it still tells, and all is asked again. */
export function moved(state: SpotState, instruction: Instruction): SpotState {
  return again({ ...state, followed: [...state.followed, { ...instruction, measured: allTold(state) }] });
}

/** What was found since the last move, with what the symptom tells of the hang. */
export function allTold({ symptom, found }: SpotState): AsHung {
  return symptom === undefined ? found : { ...TOLD_BY[symptom], ...found };
}

const TOLD_BY: Readonly<Record<Symptom, AsHung>> = {
  "slides-to-foot": { slides: "to-foot" },
  "calf-ridge": { knees: "strained" },
  "shoulder-squeeze": { shoulders: "squeezed" },
  "tips-on-entry": { sits: "too-high" },
  "bottoms-out": {},
  "strap-slips": {},
};

/** The advice was followed. */
export function advised(state: SpotState): SpotState {
  return again({ ...state, advised: state.advised + 1 });
}

function again(state: SpotState): SpotState {
  return state.symptom === undefined ? measureNow(state) : { ...state, page: "still", found: {} };
}

/** The move would not go: it is not said again here. */
export function wouldNotGo(state: SpotState, { end, action }: Move): SpotState {
  return { ...state, refused: [...state.refused, { end, action }] };
}

/** What was told does not fit together, and it is so all the same. */
export function trusting(state: SpotState): SpotState {
  return { ...state, trusted: true };
}

/** What bothered is gone. */
export function relieved(state: SpotState): SpotState {
  return { ...state, symptom: undefined, page: "result" };
}

export function stillSo(state: SpotState): SpotState {
  return { ...state, page: "result" };
}
