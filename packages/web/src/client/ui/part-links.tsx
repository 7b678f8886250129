import type { CampPage } from "../state/route.ts";
import { LinkButton } from "./link-button.tsx";

interface PartLinksProps {
  readonly page: CampPage;
  readonly label: string;
  readonly parts: readonly (readonly [part: string, word: string])[];
  readonly now: string;
}

/** The parts of one page side by side; the open one is filled. */
export function PartLinks({ page, label, parts, now }: PartLinksProps) {
  return (
    <nav class="part-links" aria-label={label}>
      {parts.map(([part, word]) => (
        <LinkButton key={part} to={{ page, part }} current={part === now}>
          {word}
        </LinkButton>
      ))}
    </nav>
  );
}
