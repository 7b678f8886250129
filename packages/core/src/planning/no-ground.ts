import type { Ground } from "../plan/camp.ts";

/** The ground of a camp that has none. */
export const NO_GROUND: Ground = { trees: [], pairs: [], obstacles: [], source: "taped", positionErrorM: 0 };
