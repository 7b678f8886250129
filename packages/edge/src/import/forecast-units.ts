/** From the unit that a forecast is written in to the camp file's unit. */
type Change = (value: number) => number;

const same: Change = (value) => value;
const times =
  (factor: number): Change =>
  (value) =>
    value * factor;

const TEMPERATURE: Readonly<Record<string, Change>> = {
  c: same,
  cel: same,
  "°c": same,
  degc: same,
  k: (kelvin) => kelvin - 273.15,
  f: (fahrenheit) => ((fahrenheit - 32) * 5) / 9,
  "[degf]": (fahrenheit) => ((fahrenheit - 32) * 5) / 9,
};
const SPEED: Readonly<Record<string, Change>> = {
  "m/s": same,
  "m s-1": same,
  "m.s-1": same,
  ms: same,
  "km/h": times(1 / 3.6),
  kmh: times(1 / 3.6),
  kn: times(1852 / 3600),
  kt: times(1852 / 3600),
  "[kn_i]": times(1852 / 3600),
  mph: times(0.44704),
};
/** Rain in an hour and rain per hour are one figure where a row is an hour. */
const RAIN: Readonly<Record<string, Change>> = {
  "mm/h": same,
  "mm h-1": same,
  mm: same,
  "kg m-2": same,
  "kg m-2 s-1": times(3600),
  "kg/m2/s": times(3600),
  "m/s": times(3.6e6),
  "m s-1": times(3.6e6),
  in: times(25.4),
};
const SHARE: Readonly<Record<string, Change>> = {
  "1": same,
  "%": times(0.01),
  percent: times(0.01),
  "{0..8}": times(1 / 8),
};
const BEARING: Readonly<Record<string, Change>> = { deg: same, "°": same, degree: same, degrees: same };

const UNITS: Readonly<Record<string, Readonly<Record<string, Change>>>> = {
  air_c: TEMPERATURE,
  wind_m_s: SPEED,
  gust_m_s: SPEED,
  rain_mm_h: RAIN,
  wind_from_deg: BEARING,
  humidity: SHARE,
  cloud: SHARE,
};

/** How a field's figures in some unit become the camp file's; nothing where the unit means nothing to the field. */
export function findUnit(field: string, unit: string): Change | undefined {
  const key = unit.trim().toLowerCase();
  const known = UNITS[field];
  return known !== undefined && Object.hasOwn(known, key) ? known[key] : undefined;
}

/** The units that a field may be in. */
export function unitsOf(field: string): readonly string[] {
  return Object.keys(UNITS[field] ?? {});
}
