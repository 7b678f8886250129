/**
 * What a surface facing the whole sky radiates to.
 *
 *   ε = 0.711 + 0.56 x + 0.73 x², x = dew point in °C / 100;  ε ← min(1, ε (1 + 0.0224 n − 0.0035 n² + 0.00028 n³));  T = ε^¼ T_air
 *
 * Shapes   scalars in, scalar out
 * Units    airK, dewPointK [K], cloudRatio [1] → K
 * Holds    nights; dew points from −20 to 30 °C; cloud 0 to 1 (n in tenths)
 * Error    laws of this kind differ by up to 12 K under a clear sky
 * Source   berdahl-martin-1984, cloud-emissivity (handbook/shelter.md)
 */
export function skyTemperatureK(airK: number, dewPointK: number, cloudRatio: number): number {
  const x = (dewPointK - 273.15) / 100;
  const n = 10 * cloudRatio;
  const clear = 0.711 + 0.56 * x + 0.73 * x * x;
  const emissivity = Math.min(1, clear * (1 + 0.0224 * n - 0.0035 * n * n + 0.00028 * n * n * n));
  return Math.sqrt(Math.sqrt(emissivity)) * airK;
}

/**
 * Temperature of a tarp's cloth at night: the sky takes what the air on both faces brings.
 *
 *   2 h (T_air − T) = ε σ (2 T⁴ − T_sky⁴ − T_air⁴), made straight about the air's temperature
 *
 * Shapes   scalars in, scalar out
 * Units    K, windMS [m/s] → K
 * Holds    one thin cloth over ground at the air's temperature; the crowns' share of the sky counts as air
 * Error    an estimate: 1 K either way
 * Source   berdahl-martin-1984 for the sky, common-practice for the films (handbook/shelter.md)
 */
export function clothTemperatureK(airK: number, skyK: number, windMS: number, skyShare: number): number {
  const lossWM2 = EMISSIVITY * SIGMA * (airK ** 4 - (skyShare * skyK ** 4 + (1 - skyShare) * airK ** 4));
  const filmWM2K = STILL_FILM + WIND_FILM * Math.sqrt(Math.max(0, windMS));
  const radiantWM2K = 4 * EMISSIVITY * SIGMA * airK ** 3;
  return airK - lossWM2 / (2 * filmWM2K + 2 * radiantWM2K);
}

/** Stefan and Boltzmann [W/m²K⁴]. */
const SIGMA = 5.670374419e-8;
const EMISSIVITY = 0.9;
/** Convective film of one face in still air, and with the root of the wind [W/m²K]. Common practice. */
const STILL_FILM = 2.5;
const WIND_FILM = 5;
