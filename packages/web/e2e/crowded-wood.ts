import type { CampDocument } from "@nightspan/edge";

interface Crowd {
  readonly trees: number;
  readonly sleepers: number;
}

/** A made-up wood, the same every time: trees strewn over a square at about one to 12 m². */
export function crowdedWood({ trees, sleepers }: Crowd): CampDocument {
  const chance = lehmer(20270514);
  const side = Math.sqrt(trees * 12);
  const round = (value: number): number => Math.round(value * 100) / 100;
  return {
    format: "nightspan-camp/1",
    name: "Crowded wood",
    ground: {
      trees: Array.from({ length: trees }, (_, index) => ({
        id: `T${index + 1}`,
        x_m: round(chance() * side),
        y_m: round(chance() * side),
        dbh_cm: round(18 + 25 * chance()),
        condition: "healthy" as const,
        looked_at: { by: "Ilse", on: "2027-05-14" },
      })),
    },
    sleepers: Array.from({ length: sleepers }, (_, index) => ({
      id: `S${index + 1}`,
      name: `Sleeper ${index + 1}`,
      mass_kg: 55 + (index % 9) * 5,
      stature_m: 1.55 + (index % 8) * 0.05,
    })),
  };
}

/** Chance that repeats itself: x → 48271 x mod 2³¹ − 1, as a share of one. */
function lehmer(start: number): () => number {
  let state = start;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
