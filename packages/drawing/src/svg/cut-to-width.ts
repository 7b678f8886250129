/** The text, or as many whole graphemes of it as fit before "…". */
export function cutToWidth(text: string, width: number, measure: (text: string) => number): string {
  if (measure(text) <= width) return text;
  const graphemes = Array.from(new Intl.Segmenter("en").segment(text), ({ segment }) => segment);
  while (graphemes.length > 0) {
    graphemes.pop();
    const shorter = `${graphemes.join("").trimEnd()}…`;
    if (measure(shorter) <= width) return shorter;
  }
  return "…";
}
