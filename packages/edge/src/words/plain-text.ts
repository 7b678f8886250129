/** Signs that would move a cursor, colour a terminal or turn the reading direction of what follows. */
const UNSEEN = /[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu;

/** A text from a file made fit for one line of a terminal: each unseen sign becomes a space. */
export function plainText(text: string): string {
  return text.replace(UNSEEN, " ");
}
