export interface HallInput {
  /** Pieces of each line. */
  readonly room: readonly number[];
  readonly serves: (person: number, line: number) => boolean;
  /** A dealing that serves as many as can be: the line of each person, −1 for none. */
  readonly lineOf: Int32Array;
}
