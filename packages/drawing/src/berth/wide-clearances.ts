import { TYPE } from "../colour/tokens.ts";
import { quantity, word } from "../scene/names.ts";
import type { Item } from "../scene/scene.ts";
import { line, text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import type { BerthFacts } from "./berth-facts.ts";
import { spanText } from "./berth-words.ts";
import { dimension, dimensionWithGap } from "./dimension.ts";
import { groundRangeM, onPaper, type SideFrame } from "./side-frame.ts";
import { lowest } from "./sleeper-silhouette.ts";

/** Width of the words at the low point [px]. */
const LOW_WORDS_PX = 150;
const DIM = { width: 1, tick: 5 } as const;

/** The lower of the two grounds on the paper. */
export function bottomOf({ berth }: BerthFacts, frame: SideFrame): number {
  return onPaper(frame, [0, groundRangeM(berth.hang)[0]])[1];
}

/** Ground to the lowest cloth, lying. */
export function lowPoint(facts: BerthFacts, frame: SideFrame): Item[] {
  const { hang, spanM } = facts.berth;
  const at = lowest(hang.shape.cloth);
  const groundZM = (hang.shape.groundFootZM * at[0]) / spanM;
  const [x, y] = onPaper(frame, [at[0] + 0.12, at[1]]);
  const base = onPaper(frame, [at[0] + 0.12, groundZM])[1];
  // The words stand clear of rising ground.
  const rise = Math.max(0, (hang.shape.groundFootZM / spanM) * LOW_WORDS_PX);
  const middle = Math.min((y + base) / 2 + 21, base - 9 - rise);
  return [
    dimension([x, y + 3], [x, base], DIM),
    text(quantity("short-length", hang.lowPointM, 0), [x + 14, middle - 19], {
      size: 24,
      weight: 700,
      halo: "paper",
    }),
    text(word("berth.low"), [x + 14, middle], { size: TYPE.note, halo: "paper" }),
  ];
}

/** Ground to the cloth under somebody sitting. */
export function seat(facts: BerthFacts, frame: SideFrame): Item[] {
  const { hang, spanM } = facts.berth;
  const at = lowest(hang.shape.clothSitting);
  const xM = at[0] - 0.52;
  const [x, y] = onPaper(frame, [xM, at[1]]);
  const base = onPaper(frame, [xM, (hang.shape.groundFootZM * xM) / spanM])[1];
  const [seatX] = onPaper(frame, at);
  const unsure = hang.band.seatHeightM;
  const middle = (y + base) / 2;
  return [
    line(
      [
        [x - 6, y],
        [seatX, y],
      ],
      { stroke: "rule", width: 1, dash: [4, 3], cap: "butt" },
    ),
    dimension([x, y], [x, base], DIM),
    text(
      word("berth.seat", { height: quantity("short-length", hang.seatHeightM, 0) }),
      [x - 14, middle + 2],
      {
        size: TYPE.body,
        weight: 600,
        anchor: "end",
        halo: "paper",
      },
    ),
    ...(unsure === undefined
      ? []
      : [
          text(
            word("berth.about", {
              low: quantity("short-length", unsure[0], 0),
              high: quantity("short-length", unsure[1], 0),
            }),
            [x - 14, middle + 21],
            { size: TYPE.note, anchor: "end", fill: "soft", halo: "paper" },
          ),
        ]),
  ];
}

/** In the sleeper's steps from middle to middle, and in metres from bark to bark. */
export function spanBelow(facts: BerthFacts, frame: SideFrame, words: Words): Item[] {
  const said = spanText(facts);
  const { shape } = facts.berth.hang;
  const y = bottomOf(facts, frame) + 46;
  const [left, right] = [onPaper(frame, shape.headAnchor)[0], onPaper(frame, shape.footAnchor)[0]];
  const dotted = { stroke: "rule", width: 1.25, dash: [1.5, 3.5], cap: "butt" } as const;
  const drops = [
    line(
      [
        [left, onPaper(frame, [0, 0])[1] + 6],
        [left, y + 8],
      ],
      dotted,
    ),
    line(
      [
        [right, onPaper(frame, [0, shape.groundFootZM])[1] + 6],
        [right, y + 8],
      ],
      dotted,
    ),
  ];
  return [
    ...drops,
    ...dimensionWithGap([left, y], [right, y], words.measure(words.labels(said), TYPE.lead, 700) + 20, DIM),
    text(said, [(left + right) / 2, y + 7], {
      size: TYPE.lead,
      weight: 700,
      anchor: "middle",
      halo: "paper",
    }),
  ];
}
