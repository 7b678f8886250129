import { statSync } from "node:fs";

/** Where the last good copy of a fetched forecast lies: beside the camp, as it came. */
export function copyOf(campPath: string): string {
  return `${campPath}.fetched`;
}

/** How long ago the last good copy came, in words; nothing where there is none. */
export function findCopyAge(copyPath: string, now = Date.now()): string | undefined {
  const mtimeMs = statSync(copyPath, { throwIfNoEntry: false })?.mtimeMs;
  return mtimeMs === undefined ? undefined : sayAge(Math.max(0, now - mtimeMs) / 60_000);
}

function sayAge(minutes: number): string {
  if (minutes < 90) return `${Math.round(minutes)} min old`;
  const hours = minutes / 60;
  return hours < 48 ? `${Math.round(hours)} h old` : `${Math.round(hours / 24)} days old`;
}
