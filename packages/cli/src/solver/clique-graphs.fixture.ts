import { drawFrom } from "./random-search.fixture.ts";

/** A graph of the clique benchmark, by the rule it is drawn by. */
export interface Graph {
  readonly nodes: number;
  readonly joined: (a: number, b: number) => boolean;
}

export interface GraphRule {
  readonly graph: string;
  readonly n: number;
  readonly w: number;
  readonly d: number;
  readonly c: number;
}

/**
 * hamming n-d   words of n bits, joined where they differ in d bits or more
 * johnson n-w-d words of n bits of which w are set, joined in the same way
 * keller n      words of n digits from 0 to 3, joined where they differ in two digits or more and in one of these by two
 *               modulo four; of these the nodes that are joined with 0 … 0
 * steiner 9     a node for each of the 9 points of the affine plane of order 3 and for each point of each of its 12 lines;
 *               all joined but points of one line, and a point with itself on a line
 * rb n-d        n parts of d nodes each, no two of one part joined; so often as r·n·ln n says two parts are drawn, and p·d²
 *               pairs between them are not joined either, never two of the hidden clique, which has a node of each part
 * c-fat n-c     n nodes dealt to ⌊n/(c ln n)⌋ parts in a ring, the first of them one larger; joined within a part and
 *               with the parts beside it
 */
export function graphOf({ graph, n, w, d, c }: GraphRule): Graph {
  switch (graph) {
    case "hamming":
      return ofWords(wordsOf(n), d);
    case "johnson":
      return ofWords(
        wordsOf(n).filter((word) => bitsIn(word) === w),
        d,
      );
    case "keller":
      return kellerOf(n);
    case "steiner":
      return steinerOf();
    case "rb":
      return hiddenOf(n, w, d);
    case "c-fat":
      return ringOf(n, c);
    default:
      throw new Error(`no rule for ${graph}`);
  }
}

export function edgesOf({ nodes, joined }: Graph): number {
  let edges = 0;
  for (let a = 0; a < nodes; a++) for (let b = a + 1; b < nodes; b++) if (joined(a, b)) edges++;
  return edges;
}

function wordsOf(bits: number): number[] {
  return Array.from({ length: 1 << bits }, (_, word) => word);
}

function ofWords(words: readonly number[], d: number): Graph {
  return { nodes: words.length, joined: (a, b) => bitsIn((words[a] ?? 0) ^ (words[b] ?? 0)) >= d };
}

function bitsIn(word: number): number {
  return word === 0 ? 0 : (word & 1) + bitsIn(word >> 1);
}

function ringOf(n: number, c: number): Graph {
  const parts = Math.floor(n / (c * Math.log(n)));
  const least = Math.floor(n / parts);
  const larger = n - least * parts;
  const partOf = Array.from({ length: parts }, (_, part) =>
    Array.from({ length: part < larger ? least + 1 : least }, () => part),
  ).flat();
  return {
    nodes: n,
    joined: (a, b) => {
      const apart = Math.abs((partOf[a] ?? 0) - (partOf[b] ?? 0));
      return apart <= 1 || apart === parts - 1;
    },
  };
}

function kellerOf(digits: number): Graph {
  const words = Array.from({ length: 4 ** digits }, (_, word) =>
    Array.from({ length: digits }, (_digit, at) => Math.floor(word / 4 ** at) % 4),
  );
  const joined = (one: readonly number[], other: readonly number[]): boolean => {
    const apart = one.map((digit, at) => (digit - (other[at] ?? 0) + 4) % 4).filter((by) => by !== 0);
    return apart.length >= 2 && apart.includes(2);
  };
  const zero = words[0] ?? [];
  const nodes = words.filter((word) => joined(word, zero));
  return { nodes: nodes.length, joined: (a, b) => joined(nodes[a] ?? [], nodes[b] ?? []) };
}

/** Points first, then the points of each line. */
function steinerOf(): Graph {
  const places = [0, 1, 2];
  const lines = [
    ...places.map((x) => places.map((y) => 3 * x + y)),
    ...places.flatMap((slope) => places.map((rise) => places.map((x) => 3 * x + ((slope * x + rise) % 3)))),
  ];
  const nodes = [
    ...Array.from({ length: 9 }, (_, point) => ({ point, line: -1 })),
    ...lines.flatMap((points, line) => points.map((point) => ({ point, line }))),
  ];
  return {
    nodes: nodes.length,
    joined: (a, b) => {
      const [one, other] = [nodes[a], nodes[b]];
      if (one === undefined || other === undefined) return false;
      const sameLine = one.line >= 0 && one.line === other.line;
      const ofPoint = one.point === other.point && one.line < 0 !== other.line < 0;
      return !sameLine && !ofPoint;
    },
  };
}

/** Where the model is hardest: a quarter of all pairs, and r = 0.8 / ln(4/3). */
const SHARE = 0.25;
const OFTEN = 0.8 / Math.log(4 / 3);

function hiddenOf(parts: number, size: number, seed: number): Graph {
  const draw = drawFrom(seed);
  const hidden = Array.from({ length: parts }, () => draw(0, size - 1));
  const apart = new Set<string>();
  const rounds = Math.round(OFTEN * parts * Math.log(parts));
  for (let round = 0; round < rounds; round++) {
    const one = draw(0, parts - 1);
    const other = (one + draw(1, parts - 1)) % parts;
    const drawn = new Set<string>();
    while (drawn.size < Math.round(SHARE * size * size)) {
      const [a, b] = [draw(0, size - 1), draw(0, size - 1)];
      if (a === hidden[one] && b === hidden[other]) continue;
      drawn.add(pairKey(one * size + a, other * size + b));
    }
    for (const pair of drawn) apart.add(pair);
  }
  return {
    nodes: parts * size,
    joined: (a, b) => Math.floor(a / size) !== Math.floor(b / size) && !apart.has(pairKey(a, b)),
  };
}

function pairKey(a: number, b: number): string {
  return `${Math.min(a, b)} ${Math.max(a, b)}`;
}
