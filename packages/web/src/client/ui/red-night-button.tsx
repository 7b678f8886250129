import { settings, toggleRedNight } from "../state/settings.ts";
import { WORDS } from "../words.ts";
import { Button } from "./button.tsx";

/** Switches red by night on and off: the app's own button, never the clock. Brief: its sign alone on a phone. */
export function RedNightButton({ brief = false }: { readonly brief?: boolean }) {
  const red = settings.value.theme === "red-night";
  return (
    <Button onPress={toggleRedNight} pressed={red} label={WORDS.app.redNight}>
      <HalfDisc />
      <span class={brief ? "no-wrap wide-only" : "no-wrap"}>{WORDS.app.redNight}</span>
    </Button>
  );
}

function HalfDisc() {
  return (
    <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
      <circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" stroke-width="2.5" />
      <path d="M12 2A10 10 0 0 0 12 22Z" fill="currentColor" />
    </svg>
  );
}
