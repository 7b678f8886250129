import { quantity, word } from "../scene/names.ts";
import type { Scene } from "../scene/scene.ts";
import { circle, line, path } from "../scene/shapes.ts";

/** Progress as a bead on a span: `step` of `of`, the first at the left post. */
export function beadSpan(step: number, of: number, widthPx = 280): Scene {
  const [left, right] = [8, widthPx - 8];
  const share = of <= 1 ? 0.5 : (Math.min(of, Math.max(1, step)) - 1) / (of - 1);
  const inner = 0.04 + share * 0.92;
  const x = left + (right - left) * inner;
  const y = 9 + 4 * 17 * inner * (1 - inner);
  return {
    name: "bead-span",
    size: { width: widthPx, height: 40, unit: "px" },
    title: word("figure.bead", { step: quantity("count", step, 0), of: quantity("count", of, 0) }),
    desc: word("figure.bead-desc"),
    ground: "none",
    items: [
      path(
        [
          ["M", left, 9],
          ["Q", widthPx / 2, 43, right, 9],
        ],
        { fill: "none", stroke: "rule", width: 2.5 },
      ),
      line(
        [
          [left, 3],
          [left, 35],
        ],
        { stroke: "ink", width: 5, cap: "butt" },
      ),
      line(
        [
          [right, 3],
          [right, 35],
        ],
        { stroke: "ink", width: 5, cap: "butt" },
      ),
      circle([x, y], 9, { fill: "cloth", stroke: "paper", width: 2 }),
    ],
  };
}
