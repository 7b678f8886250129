/** The object without its undefined fields, typed so that they may be absent. */
export type Present<T> = {
  [K in keyof T as undefined extends T[K] ? never : K]: T[K];
} & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

export function present<T extends object>(fields: T): Present<T>;
export function present(fields: object): object {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));
}

/** A number through a conversion, or nothing where there is none. */
export function convert(value: number | undefined, change: (value: number) => number): number | undefined {
  return value === undefined ? undefined : change(value);
}

/** A pair as files hold it. */
export function twoOf<T>(one: T, other: T): [T, T] {
  return [one, other];
}
