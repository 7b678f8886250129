import { Component, type ComponentChildren } from "preact";
import { opened } from "./state/camp-store.ts";
import { describe, mistake, showMistake } from "./state/mistake.ts";
import { route } from "./state/route.ts";
import { FirstPage } from "./pages/first-page.tsx";
import { LAZY } from "./pages/lazy-pages.ts";
import { StartPage } from "./pages/start-page.tsx";
import { TonightPage } from "./pages/tonight-page.tsx";
import { FileFaults } from "./ui/file-faults.tsx";
import { MistakeScreen } from "./ui/mistake-screen.tsx";
import { Notices } from "./ui/notices.tsx";
import { WORDS } from "./words.ts";

/** The whole app: one page at a time, or our own mistake. */
export function App() {
  const details = mistake.value;
  if (details !== undefined) return <MistakeScreen details={details} />;
  return (
    <Guard>
      <a class="skip" href="#content" onClick={toContent}>
        {WORDS.app.skip}
      </a>
      <Page />
      <Notices />
      <FileFaults />
    </Guard>
  );
}

/** The skip link moves the focus; the address stays, for it says which page is open. */
function toContent(event: Event): void {
  event.preventDefault();
  document.getElementById("content")?.focus();
}

function Page() {
  const now = route.value;
  if (now.page === "first") return <FirstPage />;
  if (now.page === "store") return <LAZY.store />;
  if (now.page === "tonight")
    return now.step === "answer" ? <LAZY.answer /> : <TonightPage step={now.step} />;
  if (now.page === "start" || opened.value === undefined) return <StartPage />;
  if (now.page === "spot") return <LAZY.spot id={now.berth} />;
  if (now.page === "berth") return <LAZY.berth key={now.berth} id={now.berth} />;
  const CampPage = LAZY[now.page];
  return <CampPage />;
}

/** A fault while drawing a page is our own mistake too. */
class Guard extends Component<{ readonly children: ComponentChildren }> {
  override componentDidCatch(error: unknown): void {
    showMistake(describe(error));
  }

  override render() {
    return this.props.children;
  }
}
