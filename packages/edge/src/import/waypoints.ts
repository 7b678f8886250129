import { xmlText } from "./xml-text.ts";

/** A waypoint of a GPX file: its attributes and the text of its children, as they are written. */
export interface Waypoint {
  /** Line that it starts on. */
  readonly line: number;
  readonly lat: string | undefined;
  readonly lon: string | undefined;
  readonly texts: Readonly<Partial<Record<WaypointText, string>>>;
}

type WaypointText = "name" | "cmt" | "desc";

/**
 * The waypoints of a GPX text, in one walk over its tags. Of XML only what GPX uses is read: a document type and
 * entities of its own are none of it, so that no text can grow while it is read.
 *
 * Holds: the text has no `<!DOCTYPE`.
 */
export function readWaypoints(text: string): readonly Waypoint[] {
  const found: Waypoint[] = [];
  let open: Open | undefined;
  const lines = lineCounter(text);
  for (const tag of tagsOf(text)) {
    if (tag.name === "wpt" && !tag.ends) {
      const { attributes } = tag;
      open = {
        line: lines(tag.from),
        lat: attribute("lat", attributes),
        lon: attribute("lon", attributes),
        texts: {},
      };
      found.push(open);
      if (attributes.endsWith("/")) open = undefined;
    } else if (tag.name === "wpt") open = undefined;
    else if (open !== undefined) readChild(open, tag, text);
  }
  return found;
}

interface Open extends Waypoint {
  readonly texts: Partial<Record<WaypointText, string>>;
  child?: { readonly name: WaypointText; readonly from: number };
}

/** A child's text is what stands between its two tags; the first of each name counts. */
function readChild(open: Open, { name, ends, from, to }: Tag, text: string): void {
  if (name !== "name" && name !== "cmt" && name !== "desc") return;
  if (!ends) {
    open.child = { name, from: to };
    return;
  }
  if (open.child?.name !== name) return;
  const told = xmlText(text.slice(open.child.from, from));
  if (told !== "" && open.texts[name] === undefined) open.texts[name] = told;
  delete open.child;
}

interface Tag {
  readonly name: string;
  readonly ends: boolean;
  readonly attributes: string;
  readonly from: number;
  readonly to: number;
}

const NEXT = /<!--|<!\[CDATA\[|<\?|<(\/?)(?:[\w.-]+:)?([\w.-]+)([^<>]*)>/g;
const CLOSED_BY: Readonly<Record<string, string>> = { "<!--": "-->", "<![CDATA[": "]]>", "<?": "?>" };

/** Tags in order, without their prefix; remarks, processing instructions and texts taken as they are are passed over. */
function* tagsOf(text: string): Generator<Tag> {
  const next = new RegExp(NEXT);
  for (;;) {
    const match = next.exec(text);
    if (match === null) return;
    const [whole, slash = "", name = "", attributes = ""] = match;
    const close = CLOSED_BY[whole];
    if (close === undefined) {
      yield { name, ends: slash === "/", attributes, from: match.index, to: next.lastIndex };
    } else {
      const end = text.indexOf(close, match.index);
      if (end < 0) return;
      next.lastIndex = end + close.length;
    }
  }
}

function attribute(name: string, attributes: string): string | undefined {
  const match = new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(attributes);
  return match?.[1] ?? match?.[2];
}

/** Tells the line of places that come in order. */
function lineCounter(text: string): (at: number) => number {
  let line = 1;
  let counted = 0;
  return (at) => {
    for (let next = text.indexOf("\n", counted); next >= 0 && next < at; next = text.indexOf("\n", counted)) {
      line += 1;
      counted = next + 1;
    }
    return line;
  };
}
