import { signal } from "@preact/signals";

/** Where the reader is. Kept in the address after "#", so that it needs no server. */
export type Route =
  | { readonly page: "first" | "start" | "store" }
  | { readonly page: "tonight"; readonly step: TonightStep }
  /** A part of the camp, and of those that have parts of their own which one. */
  | { readonly page: CampPage; readonly part?: string }
  | { readonly page: "berth" | "spot"; readonly berth: string; readonly part?: string };

export const TONIGHT_STEPS = ["look", "steps", "stature", "answer", "ground"] as const;
export type TonightStep = (typeof TONIGHT_STEPS)[number];

export const CAMP_PAGES = ["map", "sleepers", "ground", "kit", "night", "rules", "cards", "log"] as const;
export type CampPage = (typeof CAMP_PAGES)[number];

const FIRST: Route = { page: "first" };

export function parseRoute(hash: string): Route {
  const [page = "", detail = "", more = ""] = hash.replace(/^#\/?/, "").split("/").map(decode);
  if (page === "start" || page === "store") return { page };
  if (page === "tonight") return { page, step: TONIGHT_STEPS.find((step) => step === detail) ?? "look" };
  if ((page === "berth" || page === "spot") && detail !== "") {
    return { page, berth: detail, ...(more === "" ? {} : { part: more }) };
  }
  const camp = CAMP_PAGES.find((name) => name === page);
  if (camp === undefined) return FIRST;
  return detail === "" ? { page: camp } : { page: camp, part: detail };
}

export function hrefOf(route: Route): string {
  if (route.page === "first") return "#/";
  if (route.page === "tonight") return `#/tonight/${route.step}`;
  const part = "part" in route ? `/${encodeURIComponent(route.part)}` : "";
  const berth = "berth" in route ? `/${encodeURIComponent(route.berth)}` : "";
  return `#/${route.page}${berth}${part}`;
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

/** Which part of the page in hand is open. */
export function partOf(names: readonly [string, ...string[]]): string {
  const now = route.value;
  const part = "part" in now ? now.part : undefined;
  return names.find((name) => name === part) ?? names[0];
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
