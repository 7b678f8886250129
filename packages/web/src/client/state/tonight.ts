import { campOfOne } from "@nightspan/edge";
import { WORDS } from "../words.ts";
import { editCamp, takeCamp, TONIGHT_ID } from "./camp-store.ts";
import { writeAt } from "./document-path.ts";
import { go } from "./route.ts";
import { settings } from "./settings.ts";
import { today } from "./today.ts";

/** Makes the camp of one from the steps and the stature, and shows its answer. */
export function startTonight(): void {
  const { steps, statureM } = settings.peek();
  const day = today();
  const document = campOfOne({ steps, statureM, date: day });
  takeCamp(document, TONIGHT_ID);
  go({ page: "tonight", step: "answer" });
}

/** Writes that both trees and what is above were looked at today. */
export function lookedAtBoth(): void {
  editCamp("", (document) =>
    writeAt(document, ["ground", "pairs", 0, "looked_at"], { by: WORDS.tonight.looker, on: today() }),
  );
}
