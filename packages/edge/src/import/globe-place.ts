/** A place on the globe, by the camp file's names. */
export interface GlobePlace {
  readonly lat_deg: number;
  readonly lon_deg: number;
}

/** A place on the globe from two numbers; nothing where they are none, or too near a pole for a plane. */
export function findGlobePlace(lat: unknown, lon: unknown): GlobePlace | undefined {
  if (typeof lat !== "number" || typeof lon !== "number") return undefined;
  return Math.abs(lat) <= 89 && Math.abs(lon) <= 180 ? { lat_deg: lat, lon_deg: lon } : undefined;
}

/** WGS 84: half the long axis [m] and the square of the eccentricity. */
const LONG_AXIS_M = 6_378_137;
const ECCENTRICITY_SQUARED = 0.006_694_379_990_14;

/**
 * Metres east and north of an origin, to the centimetre, on the plane that touches the globe there.
 *
 *   x = N cos φ₀ (λ − λ₀),  y = M (φ − φ₀)
 *
 * Error: under 0.1 m within 1 km of the origin; a phone's position is off by metres anyway.
 */
export function onPlane(place: GlobePlace, origin: GlobePlace): readonly [number, number] {
  const { acrossM, alongM } = metresPerRadian(origin);
  const east = ((((place.lon_deg - origin.lon_deg + 540) % 360) - 180) * Math.PI) / 180;
  const north = ((place.lat_deg - origin.lat_deg) * Math.PI) / 180;
  return [rounded(acrossM * east, 2), rounded(alongM * north, 2)];
}

/** The same the other way, to about a centimetre. */
export function fromPlane([xM, yM]: readonly [number, number], origin: GlobePlace): GlobePlace {
  const { acrossM, alongM } = metresPerRadian(origin);
  const east = (xM / acrossM) * (180 / Math.PI);
  const lon = ((((origin.lon_deg + east + 180) % 360) + 360) % 360) - 180;
  return { lat_deg: rounded(origin.lat_deg + (yM / alongM) * (180 / Math.PI), 7), lon_deg: rounded(lon, 7) };
}

function metresPerRadian({ lat_deg }: GlobePlace): { readonly acrossM: number; readonly alongM: number } {
  const lat = (lat_deg * Math.PI) / 180;
  const w = 1 - ECCENTRICITY_SQUARED * Math.sin(lat) ** 2;
  return {
    acrossM: (LONG_AXIS_M / Math.sqrt(w)) * Math.cos(lat),
    alongM: (LONG_AXIS_M * (1 - ECCENTRICITY_SQUARED)) / w ** 1.5,
  };
}

function rounded(value: number, digits: number): number {
  return Math.round(value * 10 ** digits) / 10 ** digits;
}
