import type { CampDocument } from "@nightspan/edge";
import { CAMP_FORMAT } from "@nightspan/edge";
import { WORDS } from "../words.ts";
import { campId, editCamp, lastCamp, opened, STORE_ID, takeCamp } from "./camp-store.ts";
import { keptCamps } from "./kept-camps.ts";

/** The one person who is fitted out from the store. */
export const PERSON = ["sleepers", 0] as const;

/** Takes the camp of the store in hand: the one kept here, or a new one with the shelves of the last camp. */
export async function openStore(): Promise<void> {
  if (campId.peek() === STORE_ID) return;
  const kit = opened.peek()?.document.kit ?? lastCamp.peek()?.document.kit ?? [];
  const kept = (await keptCamps().catch(() => [])).find(({ id }) => id === STORE_ID);
  if (kept !== undefined && takeCamp(kept.document, STORE_ID).ok) return;
  takeCamp(storeCamp(kit), STORE_ID);
}

/** A camp without ground: one person of no name, and a store. */
function storeCamp(kit: NonNullable<CampDocument["kit"]>): CampDocument {
  return {
    format: CAMP_FORMAT,
    name: WORDS.fit.campName,
    sleepers: [{ id: "person", name: WORDS.fit.somebody, stature_m: 1.75, mass_band: "70-85" }],
    kit: [...kit],
    night: { low_c: 5, wind_m_s: 3 },
  };
}

/** Puts other shelves in place of those in hand; what was kept for the person goes back. */
export function takeShelves(kit: NonNullable<CampDocument["kit"]>): void {
  editCamp("", (document) => {
    const [person, ...others] = document.sleepers;
    if (person === undefined) return document;
    const { kit: back, ...bare } = person;
    return {
      ...document,
      kit: [...kit],
      sleepers: back === undefined ? document.sleepers : [bare, ...others],
    };
  });
}

/** Somebody else: the same shelves and night, nothing kept. */
export function nextPerson(): void {
  editCamp("", (document) => ({ ...document, sleepers: storeCamp([]).sleepers }));
}
