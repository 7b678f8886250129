import { planFile, writeCamp } from "@nightspan/edge";
import { lastCamp, opened } from "./camp-store.ts";
import { logText } from "./log-store.ts";
import { answer } from "./plan-store.ts";

/** Hands a file to the reader's own device; nothing is sent anywhere. */
export function saveFile(name: string, content: string, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

export function saveCampFile(): void {
  const document = opened.peek()?.document ?? lastCamp.peek()?.document;
  if (document === undefined) return;
  saveFile(`${fileName(document.name)}.camp.json`, writeCamp(document), "application/json");
}

export function savePlanFile(): void {
  const now = answer.peek();
  if (now === undefined) return;
  const text = `${JSON.stringify(planFile(now.plan), null, 2)}\n`;
  saveFile(`${fileName(now.plan.campName)}.plan.json`, text, "application/json");
}

export function saveLogFile(): void {
  saveFile("nights.log.json", logText(), "application/json");
}

/** A name for a file, in any script, without what file systems refuse. */
export function fileName(name: string): string {
  const plain = name.normalize("NFC").replace(/[^\p{L}\p{M}\p{N}]+/gu, "-");
  return plain.replace(/^-|-$/g, "").slice(0, 60) || "camp";
}
