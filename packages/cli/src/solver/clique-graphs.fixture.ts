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
