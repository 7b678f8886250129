/** Past, present and future of a value: what undo and redo walk along. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** What the last change was about; changes of one thing in one go are undone together. */
  readonly about: string;
}

const DEPTH = 200;

export function startHistory<T>(present: T): History<T> {
  return { past: [], present, future: [], about: "" };
}

/** A new present. The one before is kept for undo, unless the change goes on with the same thing. */
export function change<T>(history: History<T>, present: T, about: string): History<T> {
  if (about !== "" && about === history.about) return { ...history, present, future: [] };
  return { past: [...history.past, history.present].slice(-DEPTH), present, future: [], about };
}

/** Ends a run of changes to one thing: the next change is a step of its own. */
export function settle<T>(history: History<T>): History<T> {
  return history.about === "" ? history : { ...history, about: "" };
}

export function undo<T>(history: History<T>): History<T> {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present,
    future: [history.present, ...history.future],
    about: "",
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [present, ...future] = history.future;
  if (present === undefined) return history;
  return { past: [...history.past, history.present], present, future, about: "" };
}
