import { chooseTheme, settings, type ThemeChoice } from "../state/settings.ts";
import { WORDS } from "../words.ts";
import { Button } from "./button.tsx";

const CHOICES: readonly ThemeChoice[] = ["device", "light", "dark", "red-night"];

/** The colours of the screen: as the device, light, dark, or red by night. */
export function ThemeSelect() {
  const { theme } = settings.value;
  return (
    <div class="choice-row" role="group" aria-label={WORDS.theme.title}>
      {CHOICES.map((choice) => (
        <Button key={choice} pressed={choice === theme} onPress={() => chooseTheme(choice)}>
          {WORDS.theme[choice]}
        </Button>
      ))}
    </div>
  );
}
