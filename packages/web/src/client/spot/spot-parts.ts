import type { Camp, PlannedBerth } from "@nightspan/core";
import type { ComponentChildren } from "preact";
import type { SpotState } from "../state/spot-state.ts";
import type { SpotPlace } from "../state/spot-things.ts";

/** What every page on the spot is given. */
export interface SpotProps {
  readonly camp: Camp;
  readonly berth: PlannedBerth;
  readonly place: SpotPlace;
  readonly state: SpotState;
  /** Goes on by one press, which can be undone. */
  readonly press: (next: (state: SpotState) => SpotState) => void;
}

/** What is asked or said, and what can be answered. */
export interface SpotPageParts {
  readonly ask: ComponentChildren;
  readonly answers: ComponentChildren;
}
