import { word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { group, line, path } from "../scene/shapes.ts";

/** The mark of the app: two posts, two straps, and the line that hangs. Drawn 58 wide and 32 high about `at`. */
export function markItem([x, y]: XY, scale = 1): Item {
  return group(
    [
      line(
        [
          [-26, -15],
          [-26, 15],
        ],
        { stroke: "ink", width: 6, cap: "butt" },
      ),
      line(
        [
          [26, -15],
          [26, 15],
        ],
        { stroke: "ink", width: 6, cap: "butt" },
      ),
      line(
        [
          [-26, -9],
          [-14.5, -3],
        ],
        { stroke: "ink", width: 3, cap: "butt" },
      ),
      line(
        [
          [26, -9],
          [14.5, -3],
        ],
        { stroke: "ink", width: 3, cap: "butt" },
      ),
      path(
        [
          ["M", -15.5, -3.5],
          ["Q", 0, 18, 15.5, -3.5],
        ],
        { fill: "none", stroke: "cloth", width: 5, cap: "butt" },
      ),
    ],
    { class: "ns-mark", move: [x, y], scale },
  );
}

/** The mark as a drawing of its own. */
export function markFigure(heightPx = 32): Scene {
  const scale = heightPx / 32;
  return {
    name: "mark",
    size: { width: 60 * scale, height: heightPx, unit: "px" },
    title: word("figure.mark"),
    desc: word("figure.mark-desc"),
    ground: "none",
    items: [markItem([30 * scale, heightPx / 2], scale)],
  };
}
