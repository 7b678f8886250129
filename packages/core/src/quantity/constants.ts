/** Standard acceleration of free fall [m/s²], exact by definition. Source: standard-gravity. */
export const GRAVITY_M_S2 = 9.80665;

/** Slack on lengths so that bounds are inclusive [m]. Source: house-convention. */
export const LENGTH_SLACK_M = 1e-9;
