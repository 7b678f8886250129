import type { Camp } from "@nightspan/core";

/** What people call the things that findings speak of by id. */
export interface Names {
  readonly tree: (id: string) => string;
  readonly sleeper: (id: string) => string;
  /** The day on which somebody looked at a tree, as the camp keeps it. */
  readonly seenOn?: (id: string) => string | undefined;
}

/** Tags and names of one camp; an id nobody named is its own name. */
export function namesOf(camp: Camp): Names {
  const tags = new Map((camp.ground?.trees ?? []).map(({ id, tag }) => [id, tag]));
  const people = new Map(camp.sleepers.map(({ id, name }) => [id, name]));
  const seen = new Map((camp.ground?.trees ?? []).map(({ id, lookedAt }) => [id, lookedAt?.on]));
  return {
    seenOn: (id) => seen.get(id),
    tree: (id) => tags.get(id) ?? id,
    sleeper: (id) => people.get(id) ?? id,
  };
}
