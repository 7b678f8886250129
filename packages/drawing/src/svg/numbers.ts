/** A number as a drawing writes it: three decimals at most, no trailing noughts, never −0. */
export function fixed(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a drawing holds ${value}, which is no place on paper`);
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
}

/** Text with the five letters escaped that mean something to XML; letters XML cannot hold become spaces. */
export function escaped(text: string): string {
  if (PLAIN.test(text)) return text;
  return text
    .replace(FORBIDDEN, " ")
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;")
    .replace(/'/g, "&#39;");
}

/** Most of what a drawing writes: nothing in it needs a second look. */
const PLAIN = /^[\w .,:;#()/+-]*$/;

/** Control letters, lone surrogates and the two that are no letters. */
const FORBIDDEN = /[\p{Cs}\uFFFE\uFFFF]|(?![\t\n\r])\p{Cc}/gu;
