import type { Inspection, KitItem } from "@nightspan/core";
import type { KitDocument } from "./camp-document.ts";
import type { DefaultsLedger } from "./defaults-ledger.ts";
import { lineState } from "./line-state.ts";
import { convert, present } from "./optional.ts";

export function kitItemToSi(item: KitDocument, defaults: DefaultsLedger): KitItem {
  const common = {
    id: item.id,
    count: item.count ?? item.numbers?.length ?? defaults.take("kit[].count", item.id),
    massKg: item.mass_kg,
    state: lineState(item.state, item.inspections) ?? defaults.take("kit[].state", item.id),
    numbers: item.numbers,
    wear: item.wear,
    inServiceOn: item.in_service_on,
    inspections: item.inspections?.map(inspectionToSi),
  };
  switch (item.kind) {
    case "hammock":
      return hammockToSi(item, common, defaults);
    case "suspension":
      return suspensionToSi(item, common, defaults);
    case "tarp":
      return tarpToSi(item, common);
    case "under":
      return underToSi(item, common);
    case "over":
      return overToSi(item, common);
    case "cord":
      return cordToSi(item, common);
    case "peg":
      return present({ ...common, kind: item.kind, label: item.label, holdsN: item.holds_n });
    default:
      return present({ ...common, kind: item.kind, label: item.label });
  }
}

/** 0 °C [K], exact by definition. */
const ICE_K = 273.15;

export function kelvin(celsius: number): number {
  return celsius + ICE_K;
}

interface Common extends Pick<KitItem, "id" | "count" | "state"> {
  readonly massKg: number | undefined;
  readonly numbers: KitItem["numbers"] | undefined;
  readonly wear: KitItem["wear"] | undefined;
  readonly inServiceOn: string | undefined;
  readonly inspections: readonly Inspection[] | undefined;
}

type InspectionDocument = NonNullable<KitDocument["inspections"]>[number];

function inspectionToSi({ by, on, finding, action, number }: InspectionDocument): Inspection {
  return present({ by, on, finding, action, number });
}

type Of<K extends KitDocument["kind"]> = Extract<KitDocument, { kind: K }>;

function hammockToSi(item: Of<"hammock">, common: Common, defaults: DefaultsLedger): KitItem {
  return present({
    ...common,
    kind: item.kind,
    lengthM: item.length_m,
    widthM: item.width_m ?? defaults.take("kit[].width_m", item.id),
    ridgelineM: item.ridgeline_m,
    maxUserKg: item.max_user_kg,
    layers: item.layers ?? defaults.take("kit[].layers", item.id),
    net: item.net ?? defaults.take("kit[].net", item.id),
    eaN: item.ea_n,
  });
}

function suspensionToSi(item: Of<"suspension">, common: Common, defaults: DefaultsLedger): KitItem {
  const widthMm = item.strap_width_mm ?? defaults.take("kit[].strap_width_mm", item.id);
  return present({
    ...common,
    kind: item.kind,
    type: item.type,
    minM: item.min_m ?? defaults.take("kit[].min_m", item.id),
    maxM: item.max_m,
    strapLengthM: item.strap_length_m,
    strapWidthM: widthMm / 1000,
    eaN: item.ea_n,
    ratedLoadN: item.rated_load_n,
    breakingN: item.breaking_n,
    throughOwnEye: item.through_own_eye,
    wraps: item.wraps,
    connectorM: item.connector_m,
  });
}

function tarpToSi(item: Of<"tarp">, common: Common): KitItem {
  return present({
    ...common,
    kind: item.kind,
    shape: item.shape,
    ridgeM: item.ridge_m,
    widthM: item.width_m,
    edgeM: item.edge_m,
    skewM: item.skew_m,
    catenaryCutM: item.catenary_cut_m,
    tieOuts: item.tie_outs,
  });
}

function underToSi(item: Of<"under">, common: Common): KitItem {
  return present({
    ...common,
    kind: item.kind,
    ...insulation(item),
    coveredRatio: item.covered,
    form: item.form,
    placement: item.placement,
    gapRatio: item.gap,
    widthM: item.width_m,
    fitsNet: item.fits_net,
  });
}

function overToSi(item: Of<"over">, common: Common): KitItem {
  return present({
    ...common,
    kind: item.kind,
    ...insulation(item),
    comfortK: convert(item.comfort_c, kelvin),
    form: item.form,
    loftM: convert(item.loft_mm, fromThousandths),
    fill: item.fill,
  });
}

/** What under and over layers tell alike. */
function insulation(item: Of<"under"> | Of<"over">) {
  return {
    insulationM2KPerW: item.r_m2k_w,
    limitK: convert(item.limit_c, kelvin),
    permeabilityMS: convert(item.permeability_mm_s, fromThousandths),
    loftLeftRatio: item.loft_left,
    lengthM: item.length_m,
  };
}

function cordToSi(item: Of<"cord">, common: Common): KitItem {
  return present({
    ...common,
    kind: item.kind,
    label: item.label,
    material: item.material,
    lengthM: item.length_m,
    widthM: convert(item.width_mm, fromThousandths),
  });
}

/** Millimetres, or millimetres a second, in metres. */
function fromThousandths(value: number): number {
  return value / 1000;
}
