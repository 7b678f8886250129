export interface WishingCamp {
  readonly stems: number;
  readonly people: number;
  readonly groups: number;
  readonly wishes: boolean;
  readonly seed: number;
}

const WITHIN_M = 25;

/**
 * A wood of 800 stems to the hectare and people of five weights and six statures, in groups with a leader each. Of each
 * seven people one wishes the one before near and one wishes them apart: 72 wishes of 250 people, some across groups.
 */
export function campOf({ stems, people, groups, wishes, seed }: WishingCamp): unknown {
  const draw = drawn(seed);
  const sideM = Math.sqrt(stems / 800) * 100;
  const groupOf = (index: number): number => Math.floor((index * groups) / people);
  return {
    format: "nightspan-camp/1",
    name: "Wishes",
    ground: {
      trees: Array.from({ length: stems }, (_, index) => ({
        id: `t${index}`,
        x_m: Number((draw() * sideM).toFixed(2)),
        y_m: Number((draw() * sideM).toFixed(2)),
        dbh_cm: Math.round(12 + draw() * 30),
      })),
    },
    sleepers: Array.from({ length: people }, (_, index) => ({
      id: `p${index}`,
      name: `P ${index}`,
      mass_kg: 45 + (index % 5) * 8,
      stature_m: 1.55 + (index % 6) * 0.05,
      ...(groups === 0 ? {} : { group: `g${groupOf(index)}`, leads: groupOf(index) !== groupOf(index - 1) }),
      ...(wishes && index % 7 === 3 ? { near: [`p${index - 1}`] } : {}),
      ...(wishes && index % 7 === 5 ? { apart: [`p${index - 1}`] } : {}),
    })),
    groups: Array.from({ length: groups }, (_, index) => ({ id: `g${index}`, within_m: WITHIN_M })),
  };
}

/** Numbers from 0 to 1: the 32-bit mix of "mulberry32". */
function drawn(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
