import { signal } from "@preact/signals";

/** Where the reader is. Kept in the address after "#", so that it needs no server. */
export type Route =
  | { readonly page: "first" | "start" | "store" }
  | { readonly page: "tonight"; readonly step: TonightStep }
  | { readonly page: CampPage }
  | { readonly page: "berth" | "spot"; readonly berth: string };

export const TONIGHT_STEPS = ["look", "steps", "stature", "answer", "ground"] as const;
export type TonightStep = (typeof TONIGHT_STEPS)[number];

export const CAMP_PAGES = ["map", "sleepers", "ground", "kit", "night", "rules", "cards"] as const;
export type CampPage = (typeof CAMP_PAGES)[number];

const FIRST: Route = { page: "first" };

export function parseRoute(hash: string): Route {
  const [page = "", detail = ""] = hash.replace(/^#\/?/, "").split("/").map(decode);
  if (page === "start" || page === "store") return { page };
  if (page === "tonight") return { page, step: TONIGHT_STEPS.find((step) => step === detail) ?? "look" };
  if ((page === "berth" || page === "spot") && detail !== "") return { page, berth: detail };
  const camp = CAMP_PAGES.find((name) => name === page);
  return camp === undefined ? FIRST : { page: camp };
}

export function hrefOf(route: Route): string {
  if (route.page === "first") return "#/";
  if (route.page === "tonight") return `#/tonight/${route.step}`;
  if (route.page === "berth" || route.page === "spot") {
    return `#/${route.page}/${encodeURIComponent(route.berth)}`;
  }
  return `#/${route.page}`;
}

export const route = signal<Route>(FIRST);

export function followAddress(): void {
  const read = (): void => {
    route.value = parseRoute(location.hash);
    scrollTo(0, 0);
  };
  addEventListener("hashchange", read);
  read();
}

export function go(to: Route): void {
  location.hash = hrefOf(to);
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
