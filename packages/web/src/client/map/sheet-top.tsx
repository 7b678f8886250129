import type { ComponentChildren } from "preact";
import { picked } from "../state/map-look.ts";
import { Button } from "../ui/button.tsx";
import { WORDS } from "../words.ts";

/** Title of a sheet about one thing, and the way back to the whole camp. */
export function SheetTop({ title }: { readonly title: ComponentChildren }) {
  return (
    <header class="sheet-top">
      <h2 class="sheet-title">{title}</h2>
      <Button kind="plain" onPress={() => (picked.value = undefined)}>
        {WORDS.app.close}
      </Button>
    </header>
  );
}
