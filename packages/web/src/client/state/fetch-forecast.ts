import { MOST_BYTES } from "@nightspan/edge";
import { fill, WORDS } from "../words.ts";

/** What came from an address, or why nothing did. */
export type Fetched =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly why: string };

/**
 * Fetches a text from an address that the reader wrote. Only addresses of the place the app itself came from are asked:
 * the page's policy lets nothing else out, and saying so is better than a fetch that cannot succeed.
 */
export async function fetchForecast(address: string, here = location.href): Promise<Fetched> {
  const target = URL.canParse(address, here) ? new URL(address, here) : undefined;
  if (target?.origin !== new URL(here).origin) return { ok: false, why: WORDS.night.notHere };
  try {
    const response = await fetch(target, { cache: "no-store", credentials: "omit", redirect: "error" });
    if (!response.ok) return { ok: false, why: fill(WORDS.night.status, { status: response.status }) };
    const text = await response.text();
    return text.length > MOST_BYTES ? { ok: false, why: WORDS.night.tooLarge } : { ok: true, text };
  } catch {
    return { ok: false, why: WORDS.night.notReached };
  }
}
