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
  const lat = (origin.lat_deg * Math.PI) / 180;
  const w = 1 - ECCENTRICITY_SQUARED * Math.sin(lat) ** 2;
  const acrossM = (LONG_AXIS_M / Math.sqrt(w)) * Math.cos(lat);
  const alongM = (LONG_AXIS_M * (1 - ECCENTRICITY_SQUARED)) / w ** 1.5;
  const east = ((((place.lon_deg - origin.lon_deg + 540) % 360) - 180) * Math.PI) / 180;
  const north = ((place.lat_deg - origin.lat_deg) * Math.PI) / 180;
  return [centimetres(acrossM * east), centimetres(alongM * north)];
}

function centimetres(valueM: number): number {
  return Math.round(valueM * 100) / 100;
}
