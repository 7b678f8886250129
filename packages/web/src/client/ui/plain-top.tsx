import type { Route } from "../state/route.ts";
import { WORDS } from "../words.ts";
import { LinkButton } from "./link-button.tsx";
import { Mark } from "./mark.tsx";
import { RedNightButton } from "./red-night-button.tsx";

interface PlainTopProps {
  readonly title: string;
  readonly back?: Route;
}

/** The strip of pages that belong to no camp. */
export function PlainTop({ title, back = { page: "first" } }: PlainTopProps) {
  return (
    <header class="strip">
      <LinkButton kind="plain" class="strip-back" to={back} label={WORDS.app.back}>
        <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true">
          <path d="M15 4L7 12L15 20" fill="none" stroke="currentColor" stroke-width="3" />
        </svg>
      </LinkButton>
      <span class="wide-only">
        <Mark />
      </span>
      <div class="strip-heading">
        <h1 class="strip-name">{title}</h1>
      </div>
      <RedNightButton brief />
    </header>
  );
}
