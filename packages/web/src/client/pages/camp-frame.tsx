import { useSignal } from "@preact/signals";
import type { ComponentChildren } from "preact";
import { opened } from "../state/camp-store.ts";
import { CAMP_PAGES, type CampPage, type Route } from "../state/route.ts";
import { CampMenu } from "../ui/camp-menu.tsx";
import { Button } from "../ui/button.tsx";
import { FaultCount } from "../ui/fault-count.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { Mark } from "../ui/mark.tsx";
import { Name } from "../ui/name.tsx";
import { NightWords } from "../ui/night-words.tsx";
import { CampVerdict } from "../ui/camp-verdict.tsx";
import { WORDS } from "../words.ts";

interface CampFrameProps {
  readonly page: CampPage | "berth";
  readonly children: ComponentChildren;
  /** What stands in the strip instead of the camp's name. */
  readonly heading?: ComponentChildren;
  /** The verdict of the page, where it is not that of the whole camp. */
  readonly verdict?: ComponentChildren;
  /** Where "back" leads on a phone. */
  readonly back?: Route;
  /** What stands right of the parts of the camp at the foot of a wide screen. */
  readonly foot?: ComponentChildren;
}

/** Strip above, parts of the camp below, and a page between. */
export function CampFrame(props: CampFrameProps) {
  const menu = useSignal(false);
  return (
    <div class="camp">
      <header class="strip">
        <LinkButton
          kind="plain"
          class="strip-back narrow-only"
          to={props.back ?? { page: "first" }}
          label={WORDS.app.back}
        >
          <BackSign />
        </LinkButton>
        <a class="strip-mark wide-only" href="#/" aria-label={WORDS.app.firstScreen}>
          <Mark />
        </a>
        <div class="strip-heading">{props.heading ?? <CampHeading />}</div>
        <div class="strip-verdict wide-only">{props.verdict ?? <CampVerdict />}</div>
        <Button class="narrow-only" onPress={() => (menu.value = true)}>
          {WORDS.nav.camp}
        </Button>
      </header>
      <main id="content" class="camp-page" tabIndex={-1}>
        <FaultCount />
        {props.children}
      </main>
      <footer class="bar wide-only">
        <CampNav page={props.page} />
        <Button kind="plain" onPress={() => (menu.value = true)}>
          {WORDS.nav.camp}
        </Button>
        <div class="bar-foot">{props.foot}</div>
      </footer>
      {menu.value ? <CampMenu page={props.page} onClose={() => (menu.value = false)} /> : null}
    </div>
  );
}

function CampHeading() {
  return (
    <>
      <h1 class="strip-name">
        <Name>{opened.value?.camp.name ?? ""}</Name>
      </h1>
      <NightWords />
    </>
  );
}

export function CampNav({ page, onPress }: { readonly page: string; readonly onPress?: () => void }) {
  return (
    <nav class="nav" aria-label={WORDS.nav.label} onClick={onPress}>
      {CAMP_PAGES.map((name) => (
        <LinkButton key={name} to={{ page: name }} current={name === page}>
          {WORDS.nav[name]}
        </LinkButton>
      ))}
    </nav>
  );
}

function BackSign() {
  return (
    <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
      <path d="M15 4L7 12L15 20" fill="none" stroke="currentColor" stroke-width="3" />
    </svg>
  );
}
