import {
  inDegrees,
  radians,
  type Hang,
  type HangNote,
  type HangQuantity,
  type HangSettling,
  type StrapHang,
  type StrapParts,
} from "@nightspan/core";
import { convert, present } from "./optional.ts";
import type { HangFile } from "./plan-schema.ts";
import { tidy } from "./tidy.ts";

/**
 * A hang as the plan file and the model door write it: snake_case, degrees. Where the ground between the trees is
 * not known, nothing is said of the foot strap's height above it.
 */
export function hangFile(hang: Hang, groundKnown = true): HangFile {
  const { strap_height_m, ...foot } = strapFile(hang.foot);
  const quantities = QUANTITIES.filter(([quantity]) => groundKnown || quantity !== "foot.strapHeightM");
  return present({
    head: strapFile(hang.head),
    foot: groundKnown ? { strap_height_m, ...foot } : foot,
    ridgeline_m: convert(hang.ridgelineM, tidy),
    ridgeline_pull_n: convert(hang.ridgelinePullN, tidy),
    seat_height_m: tidy(hang.seatHeightM),
    low_point_m: tidy(hang.lowPointM),
    foot_raise_m: tidy(hang.footRaiseM),
    level_foot_over_head_m: tidy(hang.levelFootOverHeadM),
    settle_m: convert(hang.settleM, tidy),
    settling: hang.settling === undefined ? undefined : settlingFile(hang.settling),
    ok: okFile(hang.ok, quantities),
    band: bandFile(hang.band, quantities),
    notes: hang.notes.length > 0 ? hang.notes.map(noteFile) : undefined,
  });
}

/** A note's key, with the limit it is about where there is one: "moved-by/strap-reach". */
function noteFile(note: HangNote): string {
  return "limit" in note ? `${note.key}/${note.limit}` : note.key;
}

type StrapFile = HangFile["head"];

function strapFile(strap: StrapHang): StrapFile {
  return present({
    strap_height_m: tidy(strap.strapHeightM),
    above_level_m: tidy(strap.aboveLevelM),
    strap_length_m: tidy(strap.strapLengthM),
    webbing_m: tidy(strap.webbingM),
    angle_deg: tidy(inDegrees(strap.angle)),
    pull_n: tidy(strap.pullN),
    sideways_n: tidy(strap.sidewaysN),
    down_n: tidy(strap.downN),
    parts: strap.parts === undefined ? undefined : partsFile(strap.parts),
  });
}

function partsFile({ roundTrunkM, tieM, offBarkM, connectorM, slingM }: StrapParts): StrapFile["parts"] {
  return {
    round_trunk_m: tidy(roundTrunkM),
    tie_m: tidy(tieM),
    off_bark_m: tidy(offBarkM),
    connector_m: tidy(connectorM),
    sling_m: tidy(slingM),
  };
}

function settlingFile(settling: HangSettling): HangFile["settling"] {
  return present({
    head_stretch_m: tidy(settling.headStretchM),
    foot_stretch_m: tidy(settling.footStretchM),
    ten_minutes_m: tidy(settling.tenMinutesM),
    overnight_m: tidy(settling.overnightM),
    wet_nylon_m: convert(settling.wetNylonM, tidy),
  });
}

/** Each quantity's name in the file. */
const NAMES: Readonly<Record<HangQuantity, string>> = {
  "head.strapHeightM": "head.strap_height_m",
  "foot.strapHeightM": "foot.strap_height_m",
  "head.strapLengthM": "head.strap_length_m",
  "foot.strapLengthM": "foot.strap_length_m",
  "head.angle": "head.angle_deg",
  "foot.angle": "foot.angle_deg",
  "head.pullN": "head.pull_n",
  "foot.pullN": "foot.pull_n",
  spanM: "span_m",
  seatHeightM: "seat_height_m",
  lowPointM: "low_point_m",
  footRaiseM: "foot_raise_m",
  ridgelinePullN: "ridgeline_pull_n",
};

/** A quantity's name in the file. */
export function quantityName(quantity: HangQuantity): string {
  return NAMES[quantity];
}

function okFile(ok: Hang["ok"], quantities: Quantities): HangFile["ok"] {
  return Object.fromEntries(
    quantities.flatMap(([quantity, name]) => {
      const range = ok[quantity];
      if (range === undefined) return [];
      const [low, high] = [inFileUnit(quantity, range.low), inFileUnit(quantity, range.high)];
      return [[name, { low, high, binds_low: range.bindsLow, binds_high: range.bindsHigh }]];
    }),
  );
}

function bandFile(band: Hang["band"], quantities: Quantities): HangFile["band"] {
  return Object.fromEntries(
    quantities.flatMap(([quantity, name]) => {
      const range = band[quantity];
      if (range === undefined) return [];
      return [[name, [inFileUnit(quantity, range[0]), inFileUnit(quantity, range[1])]]];
    }),
  );
}

type Quantities = readonly (readonly [HangQuantity, string])[];

const QUANTITIES: Quantities = Object.entries(NAMES).flatMap(([key, name]) =>
  isQuantity(key) ? [[key, name] as const] : [],
);

function isQuantity(key: string): key is HangQuantity {
  return key in NAMES;
}

/** A quantity in the unit that its name in the file ends in. */
export function inFileUnit(quantity: HangQuantity, value: number): number {
  return tidy(NAMES[quantity].endsWith("_deg") ? inDegrees(radians(value)) : value);
}
