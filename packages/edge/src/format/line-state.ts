import type { Inspection, KitItem } from "@nightspan/core";

type State = KitItem["state"];
type Look = Pick<Inspection, "action"> & { readonly number?: string | undefined };

const STATE_AFTER = { pass: "in-use", quarantine: "quarantined", retire: "retired" } as const;
const WORSE: readonly State[] = ["in-use", "quarantined", "retired"];

/** What the last look at a whole line left it in; nothing where only single pieces were looked at. */
export function lastLineState(log: readonly Look[]): State | undefined {
  const last = log.findLast(({ number }) => number === undefined);
  return last === undefined ? undefined : STATE_AFTER[last.action];
}

/** The state of a line: what is stated or what the log says, whichever is worse; nothing where neither says one. */
export function lineState(stated: State | undefined, log: readonly Look[] = []): State | undefined {
  const told = [stated, lastLineState(log)].filter((state) => state !== undefined);
  return told.reduce<State | undefined>(
    (worse, state) => (worse === undefined || WORSE.indexOf(state) > WORSE.indexOf(worse) ? state : worse),
    undefined,
  );
}
