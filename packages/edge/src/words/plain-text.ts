/** Signs that would move a cursor, colour a terminal or turn the reading direction of what follows. */
const UNSEEN = /[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu;
/** The same, and before it a whole fence, opened and closed, with none of them inside. */
const FENCE_OR_UNSEEN =
  /(\u2068[^\p{Cc}\u202a-\u202e\u2066-\u2069]*\u2069)|[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu;

/** A text from a file made fit for one line of a terminal: each unseen sign becomes a space; whole fences stay. */
export function plainText(text: string): string {
  return text.replace(FENCE_OR_UNSEEN, (_, fence?: string) => fence ?? " ");
}

/**
 * A name made fit for a line of a terminal; one that runs from right to left is fenced in, so that it does not turn
 * what stands beside it. The fence takes no column.
 */
export function fencedName(name: string): string {
  const plain = name.replace(UNSEEN, " ");
  return RIGHT_TO_LEFT.test(plain) ? `\u2068${plain}\u2069` : plain;
}

const RIGHT_TO_LEFT = /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;
