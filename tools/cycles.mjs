/**
 * The rings of a directed graph: its strongly connected parts of more than one node, and self-loops
 * (Tarjan 1972). Each ring is sorted, and so is the list.
 *
 * @param {ReadonlyMap<string, readonly string[]>} graph
 * @returns {string[][]}
 */
export function cycles(graph) {
  /** @type {Map<string, number>} */
  const order = new Map();
  /** @type {Map<string, number>} */
  const low = new Map();
  /** @type {string[]} */
  const stack = [];
  /** @type {string[][]} */
  const found = [];

  /** @param {string} node */
  function visit(node) {
    order.set(node, order.size);
    low.set(node, order.get(node) ?? 0);
    stack.push(node);
    for (const next of graph.get(node) ?? []) {
      if (!order.has(next)) visit(next);
      if (stack.includes(next)) low.set(node, Math.min(low.get(node) ?? 0, low.get(next) ?? 0));
    }
    if (low.get(node) !== order.get(node)) return;
    const ring = stack.splice(stack.indexOf(node)).sort();
    if (ring.length > 1 || (graph.get(node) ?? []).includes(node)) found.push(ring);
  }

  for (const node of [...graph.keys()].sort()) if (!order.has(node)) visit(node);
  return found.sort((a, b) => ((a[0] ?? "") < (b[0] ?? "") ? -1 : 1));
}
