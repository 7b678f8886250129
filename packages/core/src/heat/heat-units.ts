/** 0 °C [K], exact by definition. Source: si-units. */
export const ICE_K = 273.15;

/** One clo and one tog [m²K/W], exact by definition. Source: iso-9920. */
export const CLO_M2K_PER_W = 0.155;
export const TOG_M2K_PER_W = 0.1;

/** The R value printed on mats, 1 ft²·°F·h/BTU [m²K/W]. Source: si-units. */
export const R_VALUE_M2K_PER_W = 1 / 5.6782633411;

/** One kilocalorie a day [W], exact by definition. Source: mifflin-1990. */
export const KCAL_PER_DAY_W = 4184 / 86_400;
