import type { Item, XY } from "../scene/scene.ts";
import { box, circle, group, line, path, polygon } from "../scene/shapes.ts";
import type { PathStep } from "../scene/scene.ts";

export type SignKind = "meet" | "muster" | "fallback";

/** Side of a sign [px]. */
export const SIGN_SIZE = 26;

/** Signs for people: open square with a dot, square of four inward corners, flat bar under a low roof. */
export function sign(kind: SignKind, [x, y]: XY): Item {
  const ground = box([x - 15, y - 13], 30, 26, { fill: "panel" });
  const ink = { stroke: "ink", width: 2.5 } as const;
  const drawn: Readonly<Record<SignKind, () => Item[]>> = {
    meet: () => [
      box([x - 10, y - 10], 20, 20, { fill: "panel", ...ink, join: "miter" }),
      circle([x, y], 4, { fill: "ink" }),
    ],
    muster: () => [
      ground,
      ...[45, 135, 225, 315].flatMap((angle) => inward([x, y], (angle * Math.PI) / 180)),
    ],
    fallback: () => [
      ground,
      line(
        [
          [x - 11, y + 1],
          [x, y - 9],
          [x + 11, y + 1],
        ],
        { ...ink, cap: "butt", join: "miter" },
      ),
      polygon(
        [
          [x - 9, y + 4],
          [x + 9, y + 4],
          [x + 9, y + 9],
          [x - 9, y + 9],
        ],
        { fill: "ink" },
      ),
    ],
  };
  return group(drawn[kind](), { class: `ns-sign ns-${kind}`, ref: `spot/${kind}` });
}

function inward([x, y]: XY, angle: number): Item[] {
  const [dx, dy] = [Math.sign(Math.cos(angle)), Math.sign(Math.sin(angle))];
  const steps: PathStep[] = [
    ["M", x + dx * 11, y + dy * 11],
    ["L", x + dx * 4, y + dy * 4],
    ["M", x + dx * 10, y + dy * 4],
    ["L", x + dx * 4, y + dy * 4],
    ["L", x + dx * 4, y + dy * 10],
  ];
  return [path(steps, { fill: "none", stroke: "ink", width: 2.25, join: "miter" })];
}
