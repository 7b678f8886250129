import type { Weight } from "@nightspan/drawing";

/** How letters are put on the page: filled, or stroked by a rim of this width in the same unit as the size. */
export interface Ink {
  readonly colour: string;
  readonly rim?: number;
}

/** A face that can set some scripts. */
export interface Face {
  /** Whether it has every letter of the text. */
  readonly covers: (text: string) => boolean;
  /** Width over the size. */
  readonly width: (text: string, weight: Weight) => number;
  /** Sets the text from the left end of its base line. */
  readonly set: (
    doc: PDFKit.PDFDocument,
    text: string,
    at: readonly [number, number],
    size: number,
    weight: Weight,
    ink: Ink,
  ) => void;
}

/** Letters that take no room and that no face needs to have: joiners, isolates, the sign of variation. */
export const UNSEEN = /[\p{Cf}\uFE0E\uFE0F]/u;

/** The code points of a text that somebody sees. */
export function seenCodePoints(text: string): number[] {
  return Array.from(text).flatMap((letter) => (UNSEEN.test(letter) ? [] : [letter.codePointAt(0) ?? 0]));
}

export function isBold(weight: Weight): boolean {
  return weight >= 600;
}
