/** The version of Nightspan: stands in every plan, and is what `--version` tells. */
export const ENGINE = "0.1.0";
