import type { PitchOption, Plan } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene, XY } from "../scene/scene.ts";
import { circle, stroke, text } from "../scene/shapes.ts";
import type { RoseOptions } from "./rain-rose-scene.ts";

const EDGE = { left: 20, right: 20, top: 44, bottom: 92 } as const;

/**
 * Ways to pitch a tarp that no other beats: water that arrives to the right, room over the ridgeline up, a larger ring
 * for more pull on the guys. The chosen one is filled. For the planner's own screen.
 */
export function pitchTradeScene(plan: Plan, berthId: string, { widthPx }: RoseOptions): Scene {
  const options = plan.berths.find(({ id }) => id === berthId)?.tarp?.options ?? [];
  const heightPx = 320;
  const place = placer(options, widthPx, heightPx);
  const base = heightPx - EDGE.bottom;
  return {
    name: "pitch-trade",
    size: { width: widthPx, height: heightPx, unit: "px" },
    title: word("pitch.title", { berth: name(berthId) }),
    desc: word("pitch.desc"),
    ground: "paper",
    items: [
      stroke([EDGE.left, base, widthPx - EDGE.right, base], { stroke: "ink", width: 1.5 }),
      stroke([EDGE.left, EDGE.top - 14, EDGE.left, base], { stroke: "ink", width: 1.5 }),
      text(word("pitch.headroom"), [EDGE.left, EDGE.top - 24], { size: TYPE.note, weight: 600 }),
      text(word("pitch.wet"), [widthPx - EDGE.right, base + 24], {
        size: TYPE.note,
        weight: 600,
        anchor: "end",
      }),
      text(word("pitch.load"), [widthPx - EDGE.right, base + 46], {
        size: TYPE.note,
        anchor: "end",
        fill: "soft",
      }),
      ...[...options]
        .sort((a, b) => Number(a.chosen) - Number(b.chosen))
        .flatMap((one) => mark(one, place, options)),
      ...chosenWords(options, base + 74),
    ],
  };
}

type Place = (option: PitchOption) => XY;

function placer(options: readonly PitchOption[], widthPx: number, heightPx: number): Place {
  const wets = options.map(({ wetM3S }) => wetM3S);
  const rooms = options.map(({ headroomM }) => headroomM);
  const [mostWet, mostRoom, leastRoom] = [Math.max(1e-12, ...wets), Math.max(...rooms), Math.min(...rooms)];
  const roomRange = mostRoom - leastRoom || 1;
  const width = widthPx - EDGE.left - EDGE.right - 60;
  const height = heightPx - EDGE.top - EDGE.bottom - 50;
  return ({ wetM3S, headroomM }) => [
    EDGE.left + 30 + (wetM3S / mostWet) * width,
    EDGE.top + 20 + (1 - (headroomM - leastRoom) / roomRange) * height,
  ];
}

function mark(option: PitchOption, place: Place, all: readonly PitchOption[]): Item[] {
  const most = Math.max(1, ...all.map(({ sideLoadN }) => sideLoadN));
  const r = 5 + 9 * Math.sqrt(option.sideLoadN / most);
  const at = place(option);
  return [circle(at, r, PAINT[option.chosen ? "chosen" : "other"])];
}

const PAINT = {
  chosen: { fill: "cloth", stroke: "cloth", width: 2, class: "ns-chosen" },
  other: { fill: "panel", stroke: "ink", width: 1.75 },
} as const;

/** The chosen one's own figures, beneath. */
function chosenWords(options: readonly PitchOption[], y: number): Item[] {
  const chosen = options.find((option) => option.chosen);
  if (chosen === undefined) return [];
  const room = quantity("short-length", chosen.headroomM, 0);
  const said = word("pitch.chosen", { room, wet: quantity("flow", chosen.wetM3S, 0) });
  return [
    circle([EDGE.left + 7, y - 5], 7, PAINT.chosen),
    text(said, [EDGE.left + 22, y], { size: TYPE.note, weight: 600 }),
  ];
}
