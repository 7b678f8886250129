import { lazyPage } from "../ui/lazy-page.tsx";

/** Every page but the first screen and the way between two trees: they come after the first view. */
export const LAZY = {
  answer: lazyPage(() => import("./tonight-answer.tsx").then(({ TonightAnswer }) => TonightAnswer)),
  map: lazyPage(() => import("./map-page.tsx").then(({ MapPage }) => MapPage)),
  berth: lazyPage(() => import("./berth-page.tsx").then(({ BerthPage }) => BerthPage)),
  spot: lazyPage(() => import("./spot-page.tsx").then(({ SpotPage }) => SpotPage)),
  cards: lazyPage(() => import("./cards-page.tsx").then(({ CardsPage }) => CardsPage)),
  sleepers: lazyPage(() => import("./sleepers-page.tsx").then(({ SleepersPage }) => SleepersPage)),
  ground: lazyPage(() => import("./ground-page.tsx").then(({ GroundPage }) => GroundPage)),
  kit: lazyPage(() => import("./kit-page.tsx").then(({ KitPage }) => KitPage)),
  night: lazyPage(() => import("./night-page.tsx").then(({ NightPage }) => NightPage)),
  rules: lazyPage(() => import("./rules-page.tsx").then(({ RulesPage }) => RulesPage)),
  log: lazyPage(() => import("./log-page.tsx").then(({ LogPage }) => LogPage)),
  store: lazyPage(() => import("./store-page.tsx").then(({ StorePage }) => StorePage)),
} as const;

/** Brings all of them, so that no page has to be waited for. */
export function bringPages(): void {
  for (const { bring } of Object.values(LAZY)) bring();
}
