import type { SceneSize } from "../scene/scene.ts";

/** A6, upright [mm]. */
export const CARD: SceneSize = { width: 105, height: 148, unit: "mm" };

/** A6 on its side [mm]. */
export const CARD_WIDE: SceneSize = { width: 148, height: 105, unit: "mm" };

/** A4, upright and on its side [mm]. */
export const A4: SceneSize = { width: 210, height: 297, unit: "mm" };
export const A4_WIDE: SceneSize = { width: 297, height: 210, unit: "mm" };

/** White edge of a card [mm]. */
export const EDGE = 6;

/** The corner kept free for a punched hole [mm]. */
export const HOLE = 9;

export const RULE = { thin: 0.3, thick: 0.6 } as const;
