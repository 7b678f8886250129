import { existsSync } from "node:fs";

/** A path where nothing stands yet: itself, or with the first number that makes it so, `.2`, `.3`, … */
export function freeName(path: string): string {
  if (!existsSync(path)) return path;
  for (let number = 2; ; number += 1) {
    const numbered = `${path}.${number}`;
    if (!existsSync(numbered)) return numbered;
  }
}
