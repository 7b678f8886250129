/** A level vector: east and north. */
export type Vector = readonly [east: number, north: number];

/**
 * Length of the longest sum that any of the vectors can make: hammocks that pull a trunk both ways balance only
 * while somebody lies in each.
 *
 *   max over subsets |Σ v|
 *
 * The longest sum takes all that point to one side of some line; each such line is turned until it meets a vector.
 *
 * Shapes   n vectors → their unit
 * Error    rounding of the sums
 * Source   derivation in handbook/planning.md
 */
export function greatestSum(vectors: readonly Vector[]): number {
  let greatest = 0;
  for (const along of vectors) {
    for (const side of [1, -1]) {
      const sum = sumWhere(vectors, (vector) => side * cross(along, vector) > 0);
      for (const way of [1, -1]) {
        const inLine = sumWhere(
          vectors,
          (vector) => cross(along, vector) === 0 && way * dot(along, vector) > 0,
        );
        greatest = Math.max(greatest, Math.hypot(sum[0] + inLine[0], sum[1] + inLine[1]));
      }
    }
  }
  return greatest;
}

function sumWhere(vectors: readonly Vector[], isIn: (vector: Vector) => boolean): Vector {
  let [east, north] = [0, 0];
  for (const vector of vectors) {
    if (!isIn(vector)) continue;
    east += vector[0];
    north += vector[1];
  }
  return [east, north];
}

function cross(a: Vector, b: Vector): number {
  return a[0] * b[1] - a[1] * b[0];
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1];
}
