import type { KitDocument } from "@nightspan/edge";

/** One field of a line of the store, as the camp file names it. */
export type KitField =
  | { readonly name: string; readonly is: "number"; readonly unit?: string; readonly hint?: string }
  | { readonly name: string; readonly is: "share" }
  | { readonly name: string; readonly is: "flag" }
  | { readonly name: string; readonly is: "text" }
  | { readonly name: string; readonly is: "choice"; readonly of: readonly string[] };

const number = (name: string, unit?: string): KitField =>
  unit === undefined ? { name, is: "number" } : { name, is: "number", unit };

/** The fields of each kind, in the order somebody with a tape and a scale would fill them in. */
export const KIT_FIELDS: Readonly<Record<KitDocument["kind"], readonly KitField[]>> = {
  hammock: [
    number("length_m", "m"),
    number("width_m", "m"),
    number("ridgeline_m", "m"),
    number("max_user_kg", "kg"),
    number("layers"),
    { name: "net", is: "flag" },
  ],
  suspension: [
    { name: "type", is: "choice", of: ["tied-webbing", "whoopie-sling"] },
    number("min_m", "m"),
    number("max_m", "m"),
    number("strap_length_m", "m"),
    number("strap_width_mm", "mm"),
    number("rated_load_n", "N"),
    number("breaking_n", "N"),
    { name: "through_own_eye", is: "flag" },
    number("wraps"),
    number("connector_m", "m"),
  ],
  tarp: [
    { name: "shape", is: "choice", of: ["rectangle", "diamond", "hexagon", "asymmetric"] },
    number("ridge_m", "m"),
    number("width_m", "m"),
    number("edge_m", "m"),
    number("skew_m", "m"),
    number("catenary_cut_m", "m"),
    number("tie_outs"),
  ],
  under: [
    { name: "form", is: "choice", of: ["", "mat", "underblanket"] },
    number("r_m2k_w", "m²K/W"),
    number("limit_c", "°C"),
    { name: "covered", is: "share" },
    { name: "placement", is: "choice", of: ["", "on-cloth", "between-layers", "hung-below"] },
    { name: "gap", is: "share" },
    number("permeability_mm_s", "mm/s"),
    { name: "loft_left", is: "share" },
    number("length_m", "m"),
    number("width_m", "m"),
    { name: "fits_net", is: "flag" },
  ],
  over: [
    { name: "form", is: "choice", of: ["", "bag", "quilt"] },
    number("comfort_c", "°C"),
    number("limit_c", "°C"),
    number("r_m2k_w", "m²K/W"),
    number("loft_mm", "mm"),
    { name: "fill", is: "choice", of: ["", "down", "polyester", "foam"] },
    number("permeability_mm_s", "mm/s"),
    { name: "loft_left", is: "share" },
    number("length_m", "m"),
  ],
  cord: [
    { name: "material", is: "choice", of: ["", "webbing", "ridge-cord", "guy-cord", "thin-cord"] },
    number("length_m", "m"),
    number("width_mm", "mm"),
    { name: "label", is: "text" },
  ],
  peg: [{ name: "label", is: "text" }, number("holds_n", "N")],
  connector: [{ name: "label", is: "text" }],
  light: [{ name: "label", is: "text" }],
  other: [{ name: "label", is: "text" }],
};
