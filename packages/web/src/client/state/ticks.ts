import { signal } from "@preact/signals";
import { campId } from "./camp-store.ts";

/** What was ticked on paper's twin, on this device only: packed, returned. */
const KEY = "nightspan-ticks";

const ticked = signal<ReadonlySet<string>>(new Set(read()));

/** Whether a box of the camp in hand is ticked. */
export function isTicked(box: string): boolean {
  return ticked.value.has(nameOf(box));
}

export function tick(box: string, on: boolean): void {
  const next = new Set(ticked.peek());
  if (on) next.add(nameOf(box));
  else next.delete(nameOf(box));
  ticked.value = next;
  try {
    localStorage.setItem(KEY, JSON.stringify([...next]));
  } catch {
    // A device that keeps nothing still shows the ticks until the page is left.
  }
}

function nameOf(box: string): string {
  return `${campId.value ?? ""} ${box}`;
}

function read(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(kept) ? kept.filter((one): one is string => typeof one === "string") : [];
  } catch {
    return [];
  }
}
