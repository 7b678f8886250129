import "@fontsource-variable/noto-sans-sc/wght.css";

/** Loaded for its faces alone. */
export const HAN_FACE = "Noto Sans SC Variable";
