import { DEFAULTS } from "@nightspan/core";
import { effect, signal } from "@preact/signals";

/** "device" follows the device's own light or dark. Red by night is only ever chosen by hand. */
export type ThemeChoice = "device" | "light" | "dark" | "red-night";

/** What the app remembers of the reader, on this device only. */
interface Settings {
  readonly theme: ThemeChoice;
  readonly dayTheme: Exclude<ThemeChoice, "red-night">;
  readonly statureM: number;
  readonly steps: number;
  readonly looker: string;
  /** Where a forecast is fetched from on a press; empty: nowhere. */
  readonly forecastAddress: string;
  /** When the last good forecast was fetched; empty: never. */
  readonly fetchedAt: string;
  /** Where in JSON of another form the figures of a forecast stand. */
  readonly mapping: string;
}

/** One easy step over stature, until somebody calibrates theirs. */
export const STEP_OF_STATURE = DEFAULTS["sleepers[].step_m"].value;

const KEY = "nightspan-settings";
const INITIAL: Settings = {
  theme: "device",
  dayTheme: "device",
  statureM: 1.75,
  steps: 6,
  looker: "",
  forecastAddress: "",
  fetchedAt: "",
  mapping: "",
};

/** What the reader wrote themselves. */
const WRITTEN = ["looker", "forecastAddress", "fetchedAt", "mapping"] as const;

export const settings = signal<Settings>(read());

export function remember(change: Partial<Settings>): void {
  settings.value = { ...settings.value, ...change };
}

/** Switches red by night on, or back to the theme before it. */
export function toggleRedNight(): void {
  const { theme, dayTheme } = settings.value;
  remember({ theme: theme === "red-night" ? dayTheme : "red-night" });
}

export function chooseTheme(theme: ThemeChoice): void {
  remember(theme === "red-night" ? { theme } : { theme, dayTheme: theme });
}

/** Keeps the page's theme and the remembered settings in step with the signal. */
export function followSettings(): void {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const deviceDark = signal(dark.matches);
  dark.addEventListener("change", () => (deviceDark.value = dark.matches));
  effect(() => {
    const { theme } = settings.value;
    const shown = theme === "device" ? (deviceDark.value ? "dark" : "light") : theme;
    document.documentElement.dataset["theme"] = shown;
  });
  effect(() => write(settings.value));
}

function read(): Settings {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "{}");
    return typeof kept === "object" && kept !== null ? { ...INITIAL, ...known(kept) } : INITIAL;
  } catch {
    return INITIAL;
  }
}

function known(kept: object): Partial<Settings> {
  const of = (name: string): unknown => (name in kept ? Reflect.get(kept, name) : undefined);
  const theme = themeOf(of("theme"));
  const dayTheme = themeOf(of("dayTheme"));
  const statureM = of("statureM");
  const steps = of("steps");
  return {
    ...(theme === undefined ? {} : { theme }),
    ...(dayTheme === undefined || dayTheme === "red-night" ? {} : { dayTheme }),
    ...(typeof statureM === "number" && statureM >= 1 && statureM <= 2.2 ? { statureM } : {}),
    ...(typeof steps === "number" && steps >= 1 && steps <= 30 ? { steps } : {}),
    ...Object.fromEntries(
      WRITTEN.flatMap((name) => {
        const value = of(name);
        return typeof value === "string" ? [[name, value] as const] : [];
      }),
    ),
  };
}

function themeOf(value: unknown): ThemeChoice | undefined {
  const choices: readonly ThemeChoice[] = ["device", "light", "dark", "red-night"];
  return choices.find((choice) => choice === value);
}

function write(value: Settings): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(value));
  } catch {
    // A device that keeps nothing still plans; only the memory of the reader is lost.
  }
}
