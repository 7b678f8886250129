import { CAMP_FORMAT } from "@nightspan/edge";
import { WORDS, fill } from "../words.ts";
import { campId, lastCamp, opened, STORE_ID, takeCamp, TONIGHT_ID } from "./camp-store.ts";
import { go, type Route } from "./route.ts";

/** Goes on with the last camp of this device. */
export function goOn(): void {
  const last = lastCamp.peek();
  if (last === undefined) return;
  if (opened.peek() === undefined || campId.peek() !== last.id) takeCamp(last.document, last.id);
  go(homeOf(last.id));
}

/** The page that a kept camp opens on. */
export function homeOf(id: string): Route {
  if (id === TONIGHT_ID) return { page: "tonight", step: "answer" };
  return { page: id === STORE_ID ? "store" : "map" };
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
