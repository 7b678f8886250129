/** "5½", as people say it; "½" alone below one. Whole numbers take a true minus. */
export function sayHalves(value: number): string {
  const minus = value < 0 ? "−" : "";
  const size = Math.abs(value);
  const whole = Math.floor(size);
  if (size === whole) return `${minus}${whole}`;
  return `${minus}${whole === 0 ? "" : whole}½`;
}
