import type { XY } from "../scene/scene.ts";

/** An upright box on the paper. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Boxes already taken, found by the cells of a grid that they touch. */
export class TakenBoxes {
  readonly #cells = new Map<string, Box[]>();
  readonly #size: number;

  constructor(cellSize: number) {
    this.#size = cellSize;
  }

  take(box: Box): void {
    for (const cell of this.#cellsOf(box)) {
      const list = this.#cells.get(cell);
      if (list === undefined) this.#cells.set(cell, [box]);
      else list.push(box);
    }
  }

  isFree(box: Box): boolean {
    return this.#cellsOf(box).every(
      (cell) => !(this.#cells.get(cell) ?? []).some((other) => overlap(box, other)),
    );
  }

  #cellsOf({ left, top, right, bottom }: Box): string[] {
    const cells: string[] = [];
    for (let x = Math.floor(left / this.#size); x <= Math.floor(right / this.#size); x++) {
      for (let y = Math.floor(top / this.#size); y <= Math.floor(bottom / this.#size); y++) {
        cells.push(`${x}/${y}`);
      }
    }
    return cells;
  }
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export function boxAround([x, y]: XY, halfWidth: number, halfHeight = halfWidth): Box {
  return { left: x - halfWidth, right: x + halfWidth, top: y - halfHeight, bottom: y + halfHeight };
}

/** A place for a label: where its base line begins, ends or has its middle. */
export interface LabelPlace {
  readonly at: XY;
  readonly anchor: "start" | "middle" | "end";
}

/** The room a line of text takes at a place. */
export function textBox({ at: [x, y], anchor }: LabelPlace, width: number, size: number): Box {
  const left = anchor === "start" ? x : anchor === "end" ? x - width : x - width / 2;
  return { left, right: left + width, top: y - size * 0.8, bottom: y + size * 0.25 };
}

/** Places round a point, the best first: right, left, below, above, then the corners. */
export function placesRound([x, y]: XY, away: number, size: number): LabelPlace[] {
  const [base, near] = [size * 0.34, away * 0.75];
  return [
    { at: [x + away, y + base], anchor: "start" },
    { at: [x - away, y + base], anchor: "end" },
    { at: [x, y + away + size * 0.8], anchor: "middle" },
    { at: [x, y - away - size * 0.22], anchor: "middle" },
    { at: [x + near, y + near + size * 0.6], anchor: "start" },
    { at: [x - near, y + near + size * 0.6], anchor: "end" },
    { at: [x + near, y - near], anchor: "start" },
    { at: [x - near, y - near], anchor: "end" },
  ];
}

/** Small boxes strung along a line, so that labels keep off it. */
export function boxesAlong(points: readonly XY[], closed: boolean): Box[] {
  const ring = closed && points[0] !== undefined ? [...points, points[0]] : points;
  return ring.slice(1).flatMap((end, index) => {
    const start = ring[index] ?? end;
    const steps = Math.max(1, Math.ceil(Math.hypot(end[0] - start[0], end[1] - start[1]) / 14));
    return Array.from({ length: steps }, (_, step) => {
      const share = (step + 0.5) / steps;
      return boxAround([start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share], 4);
    });
  });
}

/** Boxes along a circle. */
export function boxesRound([x, y]: XY, r: number): Box[] {
  const count = Math.max(8, Math.ceil((2 * Math.PI * r) / 14));
  return Array.from({ length: count }, (_, index) => {
    const angle = (index * 2 * Math.PI) / count;
    return boxAround([x + r * Math.cos(angle), y + r * Math.sin(angle)], 5);
  });
}
