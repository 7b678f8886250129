import { signal } from "@preact/signals";

/** Details of a mistake of the app's own; undefined while there is none. */
export const mistake = signal<string | undefined>(undefined);

export function showMistake(details: string): void {
  mistake.value = details;
}

/** Anything that nobody caught is our own mistake, and is told as such. */
export function catchMistakes(): void {
  addEventListener("error", (event) => showMistake(describe(event.error ?? event.message)));
  addEventListener("unhandledrejection", (event) => showMistake(describe(event.reason)));
}

export function describe(error: unknown): string {
  if (error instanceof Error) return error.stack ?? `${error.name}: ${error.message}`;
  return typeof error === "string" ? error : "An error without details.";
}
