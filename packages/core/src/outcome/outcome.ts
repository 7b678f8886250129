/**
 * What a model answers: a value, or every reason why there is none.
 *
 * A refusal names the field, what was found there and what is needed. Where a request is
 * impossible because one limit stands in the way, `binds` names that limit.
 */
export type Outcome<T> = Success<T> | Failure;

export interface Success<T> {
  readonly ok: true;
  readonly value: T;
}

export interface Failure {
  readonly ok: false;
  readonly refusals: readonly Refusal[];
}

export interface Refusal {
  readonly field: string;
  readonly got: unknown;
  readonly need: string;
  readonly binds?: Limit;
}

/** The limits that can make a request impossible. Words for them are made in `edge`. */
export type Limit =
  | "trees-too-close"
  | "sling-shortest"
  | "sling-longest"
  | "strap-reach"
  | "strap-height-cap"
  | "low-point-cap"
  | "low-point-ground"
  | "angle-flattest"
  | "angle-steepest"
  | "seat-lowest"
  | "seat-highest"
  | "foot-raise-least"
  | "foot-raise-most"
  | "ridgeline-longer-than-cloth"
  | "span-least"
  | "span-most"
  | "tarp-ridge"
  | "trunk-bend"
  | "tree-pull"
  | "strength"
  | "user-weight";

export function succeed<T>(value: T): Success<T> {
  return { ok: true, value };
}

export function refuse(field: string, got: unknown, need: string, binds?: Limit): Failure {
  const refusal = binds === undefined ? { field, got, need } : { field, got, need, binds };
  return { ok: false, refusals: [refusal] };
}

/** One failure with all refusals, or nothing when the list is empty. */
export function refuseAll(refusals: readonly Refusal[]): Failure | undefined {
  return refusals.length > 0 ? { ok: false, refusals } : undefined;
}

/** The refusals of an outcome with its field names put under a parent: `head` + `dbhM` → `head.dbhM`. */
export function under(parent: string, failure: Failure): Failure {
  const refusals = failure.refusals.map((refusal) => ({
    ...refusal,
    field: `${parent}.${refusal.field}`,
  }));
  return { ok: false, refusals };
}
