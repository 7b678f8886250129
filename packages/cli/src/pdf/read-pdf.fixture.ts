import { inflateSync } from "node:zlib";

/** One line of text as it stands on a page, in points from the lower left corner. */
export interface PdfText {
  readonly said: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

export interface ReadPdf {
  /** All that stands outside the streams. */
  readonly source: string;
  /** Lines of text of each page. */
  readonly pages: readonly (readonly PdfText[])[];
  /** Content of each page as it was drawn. */
  readonly contents: readonly string[];
}

type Matrix = readonly [number, number, number, number, number, number];

/** Reads back what these PDFs are made of: enough of the format to see pages, text and where it stands. */
export function readPdf(bytes: Uint8Array): ReadPdf {
  const source = Buffer.from(bytes).toString("latin1");
  const objects = new Map<string, string>();
  for (const [, id = "", body = ""] of source.matchAll(/(\d+) 0 obj\n([\s\S]*?)\nendobj/g))
    objects.set(id, body);
  const object = (id: string): string => objects.get(id) ?? "";
  const kids = /\/Kids \[([^\]]*)\]/.exec(
    [...objects.values()].find((body) => body.includes("/Type /Pages")) ?? "",
  );
  const pageIds = [...(kids?.[1] ?? "").matchAll(/(\d+) 0 R/g)].map(([, id = ""]) => id);
  const contents = pageIds.map((id) => inflated(object(/\/Contents (\d+) 0 R/.exec(object(id))?.[1] ?? "")));
  const pages = pageIds.map((id, index) => {
    const resources = object(/\/Resources (\d+) 0 R/.exec(object(id))?.[1] ?? "");
    const fonts = new Map<string, Map<string, string>>();
    for (const [, name = "", font = ""] of resources.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const unicode = /\/ToUnicode (\d+) 0 R/.exec(object(font))?.[1] ?? "";
      fonts.set(name, lettersOf(inflated(object(unicode))));
    }
    return textsOf(contents[index] ?? "", fonts);
  });
  return { source, pages, contents };
}

function inflated(body: string): string {
  const data = /stream\n([\s\S]*)\nendstream/.exec(body)?.[1];
  if (data === undefined) return "";
  const raw = Buffer.from(data, "latin1");
  return (body.includes("/FlateDecode") ? inflateSync(raw) : raw).toString("latin1");
}

/** From glyph numbers to letters, as the font's map says. */
function lettersOf(cmap: string): Map<string, string> {
  const letters = new Map<string, string>();
  for (const [, first = "", list = ""] of cmap.matchAll(/<(\w+)> <\w+> \[([^\]]*)\]/g)) {
    [...list.matchAll(/<([\w ]*)>/g)].forEach(([, hex = ""], index) => {
      const code = (Number.parseInt(first, 16) + index).toString(16).padStart(4, "0");
      const units = hex.replaceAll(" ", "").match(/.{4}/g) ?? [];
      letters.set(code, String.fromCharCode(...units.map((unit) => Number.parseInt(unit, 16))));
    });
  }
  return letters;
}

const START: Matrix = [1, 0, 0, 1, 0, 0];

function textsOf(content: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): PdfText[] {
  const texts: PdfText[] = [];
  const saved: Matrix[] = [];
  let [matrix, place, font, size, said, outlined] = [
    START,
    [0, 0] as readonly [number, number],
    "",
    0,
    "",
    false,
  ];
  for (const line of content.split("\n")) {
    const numbers = line.split(" ").slice(0, -1).map(Number);
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
    if (line === "q") saved.push(matrix);
    else if (line === "Q") matrix = saved.pop() ?? START;
    else if (line.endsWith(" cm")) matrix = times([a, b, c, d, e, f], matrix);
    else if (line === "BT") [said, outlined, place] = ["", false, [Number.NaN, 0]];
    else if (line === "1 Tr") outlined = true;
    else if (line.endsWith(" Tm")) place = Number.isNaN(place[0]) ? [e, f] : place;
    else if (line.endsWith(" Tf")) [font, size] = [line.slice(1).split(" ")[0] ?? "", b];
    else if (line.endsWith(" TJ")) said += decoded(line, fonts.get(font) ?? new Map());
    else if (line === "ET" && !outlined) {
      const [m0, m1, m2, m3, m4, m5] = matrix;
      const [x, y] = [place[0] * m0 + place[1] * m2 + m4, place[0] * m1 + place[1] * m3 + m5];
      texts.push({ said, x, y, size: size * Math.hypot(m2, m3) });
    }
  }
  return texts;
}

function decoded(line: string, letters: ReadonlyMap<string, string>): string {
  const codes = [...line.matchAll(/<(\w+)>/g)].flatMap(([, hex = ""]) => hex.match(/.{4}/g) ?? []);
  return codes.map((code) => letters.get(code.toLowerCase()) ?? "\uFFFD").join("");
}

/** The first matrix applied, then the second. */
function times(m: Matrix, n: Matrix): Matrix {
  return [
    m[0] * n[0] + m[1] * n[2],
    m[0] * n[1] + m[1] * n[3],
    m[2] * n[0] + m[3] * n[2],
    m[2] * n[1] + m[3] * n[3],
    m[4] * n[0] + m[5] * n[2] + n[4],
    m[4] * n[1] + m[5] * n[3] + n[5],
  ];
}
