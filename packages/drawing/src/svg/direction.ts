export type Direction = "ltr" | "rtl";

/**
 * The way a text runs, by its first strong letter outside of what is kept apart; where all is kept apart by the first of
 * it; left to right where it has none.
 */
export function direction(text: string): Direction {
  const outside = text.replace(KEPT_APART, "");
  return ofFirstStrong(LETTER.test(outside) ? outside : text);
}

/** From a first strong isolate to its end, or to the end of the line. */
const KEPT_APART = /[\u2066-\u2068][^\u2066-\u2069]*(?:\u2069|$)/gu;

function ofFirstStrong(text: string): Direction {
  for (const letter of text) {
    if (RIGHT_TO_LEFT.test(letter)) return "rtl";
    if (LETTER.test(letter)) return "ltr";
  }
  return "ltr";
}

/** Whether any letter of the text runs from right to left. */
export function hasRightToLeft(text: string): boolean {
  return RIGHT_TO_LEFT.test(text);
}

const RIGHT_TO_LEFT =
  /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\p{Script=Adlam}]/u;
const LETTER = /\p{L}/u;
