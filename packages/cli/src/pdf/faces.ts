import { direction, hasRightToLeft } from "@nightspan/drawing";
import type { Face } from "./face.ts";
import { kept } from "./kept.ts";
import { outlineFace, type OutlineFont } from "./outline-face.ts";
import { textFace } from "./text-face.ts";

/** A stretch of a line in one face, running one way. */
export interface Piece {
  readonly text: string;
  readonly face: Face;
}

/** The faces papers are set in. */
export interface Faces {
  /** The first that has every letter of a text. */
  readonly faceOf: (text: string) => Face | undefined;
  /**
   * A line in stretches of one face and one direction, from left to right as they stand on the page. A word is set whole
   * in one face where one has all of it. Letters that no face has are left out: see to it before (`canDraw`).
   */
  readonly pieces: (line: string) => readonly Piece[];
}

const OUTLINES: readonly OutlineFont[] = [
  // Its letters are as thin as the font comes; strokes make them plain or bold.
  { packageName: "@fontsource-variable/noto-sans-sc", extra: [0.045, 0.075] },
  { packageName: "@fontsource-variable/noto-sans-kr", extra: [0.045, 0.075] },
  { packageName: "@fontsource-variable/noto-sans-devanagari", extra: [0, 0.035] },
  { packageName: "@fontsource-variable/noto-sans-thai", extra: [0, 0.035] },
];

/** Opens the faces, once; the library that reads them is loaded only now. */
export function loadFaces(): Promise<Faces> {
  opened ??= openFaces();
  return opened;
}

let opened: Promise<Faces> | undefined;

async function openFaces(): Promise<Faces> {
  const { create } = await import("fontkit");
  const all = [textFace(create), ...OUTLINES.map((font) => outlineFace(font, create))];
  const faceOf = kept((text) => all.find(({ covers }) => covers(text)));
  return { faceOf, pieces: kept((line) => piecesOf(line, faceOf)) };
}

/** Whether every letter can be drawn. */
export function canDraw(faces: Faces, text: string): boolean {
  return text.split(" ").every((word) => faces.faceOf(word) !== undefined || eachDrawn(faces, word));
}

function eachDrawn({ faceOf }: Faces, word: string): boolean {
  return clusters(word).every((cluster) => faceOf(cluster) !== undefined);
}

function piecesOf(line: string, faceOf: Faces["faceOf"]): readonly Piece[] {
  const leftward = direction(line) === "rtl";
  const words = line.split(ISOLATES).flatMap((part) => inWords(part, leftward, faceOf));
  const joined: Word[] = [];
  for (const word of words) {
    const last = joined.at(-1);
    if (last?.face === word.face && last.rightToLeft === word.rightToLeft)
      joined[joined.length - 1] = { ...last, text: last.text + word.text };
    else joined.push(word);
  }
  return leftward ? joined.reverse() : joined;
}

interface Word extends Piece {
  readonly rightToLeft: boolean;
}

/** Words and the spaces between them; a space runs as both its neighbours do, else as the line. */
function inWords(part: string, leftward: boolean, faceOf: Faces["faceOf"]): Word[] {
  const found = part.match(/[^ ]+| +/g) ?? [];
  return found.flatMap((text, index): Word[] => {
    const sides = [found[index - 1], found[index + 1]].map(
      (side) => side !== undefined && hasRightToLeft(side),
    );
    const between = leftward ? sides.includes(true) : !sides.includes(false);
    const rightToLeft = text.startsWith(" ") ? between : hasRightToLeft(text);
    const whole = faceOf(text);
    if (whole !== undefined) return [{ text, face: whole, rightToLeft }];
    return clusters(text).flatMap((cluster) => {
      const face = faceOf(cluster);
      return face === undefined ? [] : [{ text: cluster, face, rightToLeft: hasRightToLeft(cluster) }];
    });
  });
}

/** Signs as a reader sees them. */
export function clusters(text: string): string[] {
  return Array.from(SIGNS.segment(text), ({ segment }) => segment);
}

const SIGNS = new Intl.Segmenter("en", { granularity: "grapheme" });
/** Marks that keep a run apart within a line; they are no letters. */
const ISOLATES = /[\u2066-\u2069\u200E\u200F]/;
