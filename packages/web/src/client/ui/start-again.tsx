import { WORDS } from "../words.ts";
import { LinkButton } from "./link-button.tsx";

/** The way back to the first question, where there is no answer to show. */
export function StartAgain() {
  return (
    <LinkButton kind="action" size="spot" to={{ page: "tonight", step: "look" }}>
      {WORDS.tonight.lookTitle}
    </LinkButton>
  );
}
