import type { PlannedBerth } from "@nightspan/core";
import type { CampDocument, PinDocument } from "@nightspan/edge";
import { editCamp, opened } from "./camp-store.ts";
import { writeAt } from "./document-path.ts";

/** Whether this berth's sleeper is to stay where they are. */
export function isPinned({ sleeper }: PlannedBerth): boolean {
  return (opened.value?.document.pins ?? []).some((pin) => pin.sleeper === sleeper);
}

/** Keeps this sleeper between these two trees, whatever else moves. */
export function pin(berth: PlannedBerth): void {
  editCamp("", (document) => withPins(document, [...others(document, [berth]), pinOf(berth)]));
}

/** Lets this sleeper be placed anew. */
export function unpin(berth: PlannedBerth): void {
  editCamp("", (document) => withPins(document, others(document, [berth])));
}

/** The same camp with every one of these berths kept. */
export function keepingAll(document: unknown, berths: readonly PlannedBerth[]): unknown {
  return writeAt(document, ["pins"], berths.map(pinOf));
}

/** The same camp with these pins, each in the stead of what its sleeper had before. */
export function withPinsFor(document: CampDocument, pins: readonly PinDocument[]): unknown {
  return withPins(document, [...others(document, pins), ...pins]);
}

function pinOf(berth: PlannedBerth): PinDocument {
  return pinAt(berth.sleeper, berth);
}

/** Anybody at the place of a berth, whoever lies there now. */
export function pinAt(sleeper: string, { headTree, footTree, pair }: PlannedBerth): PinDocument {
  return pair === undefined
    ? { sleeper, trees: [headTree, footTree], head: headTree }
    : { sleeper, pair, head: headTree };
}

function others(
  { pins = [] }: CampDocument,
  berths: readonly { readonly sleeper: string }[],
): readonly PinDocument[] {
  return pins.filter((pin) => !berths.some(({ sleeper }) => sleeper === pin.sleeper));
}

function withPins(document: CampDocument, pins: readonly PinDocument[]): unknown {
  return writeAt(document, ["pins"], pins.length === 0 ? undefined : pins);
}
