import { DEFAULTS } from "../plan/defaults.ts";
import type { Hammock, Suspension } from "../plan/kit.ts";

/** Cloth should be longer than the sleeper by this much [m]. Source: common-practice, 1.1 to 1.2 m. */
export const CLOTH_OVER_STATURE_M = 1.1;

/** Dealt where the store lists no hammock at all. */
export const ASSUMED_HAMMOCK: Hammock = {
  id: "",
  kind: "hammock",
  count: 1,
  state: "in-use",
  lengthM: DEFAULTS["kit.default.hammock.length_m"].value,
  ridgelineM:
    DEFAULTS["kit.default.hammock.length_m"].value * DEFAULTS["kit.default.hammock.ridgeline_ratio"].value,
  widthM: DEFAULTS["kit[].width_m"].value,
  layers: DEFAULTS["kit[].layers"].value,
  net: DEFAULTS["kit[].net"].value,
};

/** Dealt where the store lists no suspension at all. */
export const ASSUMED_SUSPENSION: Suspension = {
  id: "",
  kind: "suspension",
  type: DEFAULTS["kit.default.suspension.type"].value,
  count: 1,
  state: "in-use",
  minM: DEFAULTS["kit[].min_m"].value,
  strapWidthM: DEFAULTS["kit[].strap_width_mm"].value / 1000,
};
