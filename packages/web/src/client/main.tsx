import "@fontsource-variable/atkinson-hyperlegible-next/wght.css";
import "@fontsource-variable/noto-sans/wght.css";
import "@fontsource-variable/noto-sans-arabic/wght.css";
import "@fontsource-variable/noto-sans-devanagari/wght.css";
import "./style/tokens.css";
import "./style/base.css";
import "./style/first.css";
import "./style/frame.css";
import "./style/form.css";
import "./style/rules.css";
import "./style/people.css";
import "./style/log.css";
import "./style/store.css";
import "./style/night.css";
import "./style/fit.css";
import "./style/map.css";
import "./style/draw.css";
import "./style/berth.css";
import "./style/tonight.css";
import "./style/spot.css";
import "./style/cards.css";
import { render } from "preact";
import { App } from "./app.tsx";
import { bringPages } from "./pages/lazy-pages.ts";
import { recallCamp } from "./state/camp-store.ts";
import { followDrops } from "./state/drop-files.ts";
import { followScripts } from "./state/faces.ts";
import { catchMistakes } from "./state/mistake.ts";
import { followCamp } from "./state/plan-store.ts";
import { followAddress, route } from "./state/route.ts";
import { followSettings } from "./state/settings.ts";
import { followUndoKeys } from "./state/undo-keys.ts";
import { keepApp } from "./state/versions.ts";

/** Puts the parts together and shows the page of the address. */
async function start(): Promise<void> {
  catchMistakes();
  followSettings();
  followAddress();
  followCamp();
  followScripts();
  followDrops();
  followUndoKeys();
  await recallCamp(wantedCamp());
  const root = document.getElementById("app");
  if (root === null) throw new Error("the page has no place for the app");
  render(<App />, root);
  setTimeout(bringPages, AFTER_FIRST_VIEW_MS);
  await keepApp();
}

/** The first view is painted and answers before the other pages come. */
const AFTER_FIRST_VIEW_MS = 200;

function wantedCamp(): "last" | "tonight" | "store" | "none" {
  const { page } = route.value;
  if (page === "tonight") return "tonight";
  if (page === "store") return "store";
  return page === "first" || page === "start" ? "none" : "last";
}

await start();
