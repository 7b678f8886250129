import { doorPicture } from "@nightspan/drawing";
import { Drawing } from "../ui/drawing.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { PlainTop } from "../ui/plain-top.tsx";
import { WORDS } from "../words.ts";

/** The third door, which says plainly that it is not open yet. */
export function StorePage() {
  return (
    <div class="plain">
      <PlainTop title={WORDS.store.title} />
      <main id="content" class="plain-page" tabIndex={-1}>
        <div class="plain-picture">
          <Drawing scene={doorPicture("store")} />
        </div>
        <p class="lead">{WORDS.store.say}</p>
        <p>{WORDS.store.until}</p>
        <LinkButton kind="action" size="spot" to={{ page: "start" }}>
          {WORDS.store.toGroup}
        </LinkButton>
      </main>
    </div>
  );
}
