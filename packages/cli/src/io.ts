import { text } from "node:stream/consumers";

/** All that a command sees of the process round it; tests hand in their own. */
export interface Io {
  readonly cwd: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly stdin: () => Promise<string>;
  /** Columns of the terminal that standard output goes to; nothing for a pipe or a file. */
  readonly columns: number | undefined;
  readonly colour: boolean;
  /** Whether a person watches standard error, so that long work may show how far it is. */
  readonly watched: boolean;
}

export function processIo(): Io {
  const { stdout, stderr, stdin, env } = process;
  [stdout, stderr].forEach((stream) => stream.on("error", quietAboutClosedPipe));
  return {
    cwd: process.cwd(),
    out: (written) => void stdout.write(written),
    err: (written) => void stderr.write(written),
    stdin: () => text(stdin),
    columns: stdout.isTTY ? stdout.columns : undefined,
    colour: stdout.isTTY && (env["NO_COLOR"] ?? "") === "" && env["TERM"] !== "dumb",
    watched: stderr.isTTY,
  };
}

/** `nightspan … | head` closes the pipe early; that is no fault. */
function quietAboutClosedPipe(error: NodeJS.ErrnoException): void {
  if (error.code !== "EPIPE") throw error;
}
