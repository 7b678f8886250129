/** Whole numbers from a range, both ends included, one after the other. */
export type Draw = (least: number, most: number) => number;

/** Numbers that look random and repeat: a linear congruence on 32 bits, its high bits used. */
export function drawFrom(seed: number): Draw {
  let state = seed >>> 0;
  return (least, most) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return least + ((state >>> 8) % (most - least + 1));
  };
}
