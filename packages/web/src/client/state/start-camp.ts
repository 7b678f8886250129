import { CAMP_FORMAT } from "@nightspan/edge";
import { WORDS, fill } from "../words.ts";
import { lastCamp, opened, takeCamp, TONIGHT_ID, campId } from "./camp-store.ts";
import { go } from "./route.ts";

/** Goes on with the last camp of this device. */
export function goOn(): void {
  const last = lastCamp.peek();
  if (last === undefined) return;
  if (opened.peek() === undefined || campId.peek() !== last.id) takeCamp(last.document, last.id);
  go(last.id === TONIGHT_ID ? { page: "tonight", step: "answer" } : { page: "map" });
}

/** A camp with one sleeper and no trees yet. */
export function startCamp(name: string): void {
  takeCamp({
    format: CAMP_FORMAT,
    name: name.trim() === "" ? WORDS.start.nameGiven : name.trim(),
    sleepers: [{ id: "s1", name: fill(WORDS.sleepers.given, { n: 1 }), stature_m: 1.75 }],
  });
  go({ page: "ground" });
}
