import type { Refusal } from "@nightspan/core";
import { field, listAt, textAt, textsAt } from "./raw.ts";

/** Faults of pins: who and which trees they name, each by an id or tag that is in the file. */
export function pinChecks(document: unknown): readonly Refusal[] {
  const known = knownOf(document);
  const first = new Map<string, number>();
  return listAt(document, "pins").flatMap((pin, index) => {
    const at = `pins[${index}]`;
    const sleeper = textAt(pin, "sleeper");
    const faults = [
      ...whoFaults(sleeper, at, known),
      ...whereFaults(pin, at, known),
      ...headFaults(pin, at, known),
    ];
    if (sleeper === undefined) return faults;
    const before = first.get(sleeper);
    if (before === undefined) first.set(sleeper, index);
    else
      faults.push({ field: `${at}.sleeper`, got: sleeper, need: `one pin each; pins[${before}] is theirs` });
    return faults;
  });
}

interface Known {
  readonly sleepers: ReadonlySet<string>;
  /** Trees of the map by id and by tag. */
  readonly trees: ReadonlyMap<string, string>;
  /** Stated pairs by id, with their two tags. */
  readonly pairs: ReadonlyMap<string, readonly string[]>;
}

function knownOf(document: unknown): Known {
  const ground = field(document, "ground");
  const ids = (list: readonly unknown[]): string[] => list.flatMap((item) => textAt(item, "id") ?? []);
  const trees = listAt(ground, "trees");
  const tags = trees.flatMap((tree) => {
    const [id, tag] = [textAt(tree, "id"), textAt(tree, "tag")];
    return id === undefined || tag === undefined ? [] : [[tag, id] as const];
  });
  return {
    sleepers: new Set(ids(listAt(document, "sleepers"))),
    trees: new Map([...ids(trees).map((id) => [id, id] as const), ...tags]),
    pairs: new Map(
      listAt(ground, "pairs").flatMap((pair) => {
        const id = textAt(pair, "id");
        return id === undefined ? [] : [[id, textsAt(pair, "trees")] as const];
      }),
    ),
  };
}

function whoFaults(sleeper: string | undefined, at: string, { sleepers }: Known): Refusal[] {
  if (sleeper === undefined || sleepers.has(sleeper)) return [];
  return [{ field: `${at}.sleeper`, got: sleeper, need: "the id of a sleeper" }];
}

function whereFaults(pin: unknown, at: string, known: Known): Refusal[] {
  if (typeof pin !== "object" || pin === null) return [];
  const pair = textAt(pin, "pair");
  const hasTrees = field(pin, "trees") !== undefined;
  if (hasTrees === (field(pin, "pair") !== undefined)) {
    const need = "either trees, two ids or tags, or pair, the id of a stated pair";
    return [{ field: `${at}.trees`, got: field(pin, "trees"), need }];
  }
  if (pair !== undefined && !known.pairs.has(pair)) {
    return [{ field: `${at}.pair`, got: pair, need: "the id of a pair in ground.pairs" }];
  }
  return hasTrees ? treeFaults(textsAt(pin, "trees"), at, known) : [];
}

function treeFaults(names: readonly string[], at: string, { trees, pairs }: Known): Refusal[] {
  const [one, other] = names;
  if (one === undefined || other === undefined) return [];
  const tags = new Set([...pairs.values()].flat());
  const unknown = names.flatMap((name, index) => {
    if (trees.has(name) || tags.has(name)) return [];
    return [{ field: `${at}.trees[${index}]`, got: name, need: "the id or tag of a tree" }];
  });
  if (unknown.length > 0) return unknown;
  const idOf = (name: string): string => trees.get(name) ?? name;
  if (idOf(one) === idOf(other))
    return [{ field: `${at}.trees`, got: [one, other], need: "two different trees" }];
  const onMap = trees.has(one) && trees.has(other);
  const isStated = [...pairs.values()].some((ends) => {
    const ids = ends.map(idOf);
    return ids.includes(idOf(one)) && ids.includes(idOf(other));
  });
  return onMap || isStated
    ? []
    : [{ field: `${at}.trees`, got: [one, other], need: "two trees of one stated pair" }];
}

function headFaults(pin: unknown, at: string, { trees, pairs }: Known): Refusal[] {
  const head = textAt(pin, "head");
  if (head === undefined) return [];
  const named = textsAt(pin, "trees");
  const ends = named.length > 0 ? named : (pairs.get(textAt(pin, "pair") ?? "") ?? []);
  const idOf = (name: string): string => trees.get(name) ?? name;
  if (ends.length === 0 || ends.some((end) => idOf(end) === idOf(head))) return [];
  return [{ field: `${at}.head`, got: head, need: `one of the two trees, ${ends.join(" or ")}` }];
}
