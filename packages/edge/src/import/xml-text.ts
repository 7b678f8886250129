const PART =
  /<!\[CDATA\[([\s\S]*?)\]\]>|<!--[\s\S]*?-->|<[^<>]*>|&(?:#(\d{1,7})|#x([0-9a-fA-F]{1,6})|(\w{1,8}));/g;
const NAMED: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** The text between two tags of XML as a reader sees it: without tags and remarks, with the five entities resolved. */
export function xmlText(xml: string): string {
  return xml
    .replaceAll(PART, (part, kept?: string, decimal?: string, hex?: string, name?: string) => {
      if (kept !== undefined) return kept;
      if (name !== undefined) return NAMED[name] ?? part;
      if (decimal === undefined && hex === undefined) return "";
      const point = decimal === undefined ? Number.parseInt(hex ?? "", 16) : Number(decimal);
      return point <= 0x10_ff_ff ? String.fromCodePoint(point) : part;
    })
    .trim();
}
