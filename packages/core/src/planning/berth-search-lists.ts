/** Lists of whole numbers end to end: list i lies at `items[starts[i]]` up to `items[starts[i + 1]]`. */
export interface Lists {
  readonly starts: Int32Array;
  readonly items: Int32Array;
}

/** Lists from (owner, item) pairs; within a list the items keep the order in which they were named. */
export function listsOf(
  count: number,
  eachPair: (tell: (owner: number, item: number) => void) => void,
): Lists {
  const starts = new Int32Array(count + 1);
  eachPair((owner) => (starts[owner + 1] = (starts[owner + 1] ?? 0) + 1));
  for (let i = 1; i <= count; i++) starts[i] = (starts[i] ?? 0) + (starts[i - 1] ?? 0);
  const next = starts.slice();
  const items = new Int32Array(starts[count] ?? 0);
  eachPair((owner, item) => {
    const at = next[owner] ?? 0;
    items[at] = item;
    next[owner] = at + 1;
  });
  return { starts, items };
}

export function sizeOf(lists: Lists, owner: number): number {
  return (lists.starts[owner + 1] ?? 0) - (lists.starts[owner] ?? 0);
}

export function listOf(lists: Lists, owner: number): Int32Array {
  return lists.items.subarray(lists.starts[owner] ?? 0, lists.starts[owner + 1] ?? 0);
}
