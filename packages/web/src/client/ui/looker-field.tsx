import { useId } from "preact/hooks";
import { remember, settings } from "../state/settings.ts";
import { WORDS } from "../words.ts";

/** The name of the person who looks; remembered on this device. */
export function LookerField() {
  const id = useId();
  return (
    <div class="field field-alone">
      <label for={id}>{WORDS.tree.whoLooks}</label>
      <span class="field-value">
        <input
          id={id}
          class="input"
          dir="auto"
          maxLength={120}
          autocomplete="name"
          value={settings.value.looker}
          onInput={(event) => remember({ looker: event.currentTarget.value })}
        />
      </span>
    </div>
  );
}
