import type { Refusal } from "@nightspan/core";
import { MOST_BYTES } from "@nightspan/edge";
import { signal } from "@preact/signals";
import { WORDS } from "../words.ts";
import { takeCampText } from "./camp-store.ts";
import { go } from "./route.ts";

/** What stood against the last file that was opened; undefined once the reader has seen it. */
export const fileFaults = signal<
  { readonly name: string; readonly refusals: readonly Refusal[] } | undefined
>(undefined);

/** Opens a camp file, or lists all its faults and keeps the camp in hand. */
export async function openCampFile(file: File): Promise<void> {
  const refusals = await refusalsOf(file);
  if (refusals.length > 0) {
    fileFaults.value = { name: file.name, refusals };
    return;
  }
  fileFaults.value = undefined;
  go({ page: "map" });
}

async function refusalsOf(file: File): Promise<readonly Refusal[]> {
  if (file.size > MOST_BYTES) return [{ field: "file", got: file.size, need: WORDS.files.tooLarge }];
  const outcome = takeCampText(await file.text());
  return outcome.ok ? [] : outcome.refusals;
}

/** The demo camp, as the command line plans it too. */
export async function openExample(): Promise<void> {
  const { default: exampleCamp } = await import("./demo.camp.json?raw");
  const outcome = takeCampText(exampleCamp);
  if (!outcome.ok) throw new Error(`the example has faults: ${JSON.stringify(outcome.refusals)}`);
  go({ page: "map" });
}
