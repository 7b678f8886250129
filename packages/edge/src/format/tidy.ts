const DIGITS = 12;

/** A number as it is written: 12 digits, without the noise of conversions. Never NaN or endless. */
export function tidy(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`a number for the file is ${value}`);
  return Number(value.toPrecision(DIGITS)) + 0;
}
