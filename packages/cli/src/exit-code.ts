/** What the process ends with. */
export const EXIT = {
  /** Clear or look again, and everybody placed. */
  done: 0,
  /** Do not hang, or not everybody placed. */
  refused: 1,
  /** The input cannot be used. */
  input: 2,
  /** Our own mistake. */
  mistake: 70,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];
