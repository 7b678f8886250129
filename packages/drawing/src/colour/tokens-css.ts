import { THEMES, type ColourToken, type ThemeName } from "./tokens.ts";

const SCREEN_THEMES: readonly ThemeName[] = ["light", "dark", "red-night"];

/**
 * The stylesheet that gives drawings and app their colours: `--ns-NAME` for each theme, chosen by
 * `data-theme` (the device's own wish where it is silent), and the classes that bind drawn shapes to them.
 */
export function tokensCss(): string {
  const themes = SCREEN_THEMES.map((theme) => `[data-theme="${theme}"] {\n${variables(theme)}}\n`);
  return [
    `:root {\n${variables("light")}}\n`,
    `@media (prefers-color-scheme: dark) {\n:root:not([data-theme]) {\n${variables("dark")}}\n}\n`,
    ...themes,
    ...colourTokens().map(bindings),
  ].join("");
}

/** Every colour's name, in the order of the token table. */
export function colourTokens(): ColourToken[] {
  return Object.keys(THEMES.light).filter(isColourToken);
}

function isColourToken(name: string): name is ColourToken {
  return name in THEMES.light;
}

function variables(theme: ThemeName): string {
  return colourTokens()
    .map((token) => `  --ns-${token}: ${THEMES[theme][token]};\n`)
    .join("");
}

function bindings(token: ColourToken): string {
  return `.ns-fill-${token} {\n  fill: var(--ns-${token});\n}\n.ns-stroke-${token} {\n  stroke: var(--ns-${token});\n}\n`;
}
