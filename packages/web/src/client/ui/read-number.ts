/** An empty field is taken out; a decimal comma is a point; anything else goes on as it is, to be refused. */
export function readNumber(text: string): unknown {
  const plain = text.trim().replace(",", ".").replace("\u2212", "-");
  if (plain === "") return undefined;
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : text;
}
