/** Entry `index` of a typed array; NaN outside it, so that a slip shows in every figure that follows. */
export function at(array: Float64Array, index: number): number {
  return array[index] ?? Number.NaN;
}
