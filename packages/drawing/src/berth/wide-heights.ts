import type { HangQuantity, StrapHang } from "@nightspan/core";
import { TYPE } from "../colour/tokens.ts";
import { quantity } from "../scene/names.ts";
import type { Item, XY } from "../scene/scene.ts";
import { text } from "../scene/shapes.ts";
import type { Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import type { BerthFacts } from "./berth-facts.ts";
import {
  aboutText,
  bodyMarkText,
  levelText,
  limitText,
  markText,
  setByText,
  toldHeightM,
} from "./berth-words.ts";
import { dimension } from "./dimension.ts";
import { BAND_WIDTH, okBand } from "./ok-band.ts";
import { onPaper, type SideFrame } from "./side-frame.ts";

type End = "head" | "foot";

const DIM = { width: 1, tick: 5 } as const;

interface EndPlace {
  readonly strap: StrapHang;
  readonly anchor: XY;
  readonly base: XY;
  /** Outer bark. */
  readonly barkX: number;
  /** Away from the berth: −1 left, 1 right. */
  readonly out: -1 | 1;
}

function placeOf({ berth, head, foot }: BerthFacts, frame: SideFrame, end: End): EndPlace {
  const { hang, spanM } = berth;
  const atHead = end === "head";
  const base = onPaper(frame, atHead ? [0, 0] : [spanM, hang.shape.groundFootZM]);
  const out = atHead ? -1 : 1;
  const radius = ((atHead ? head : foot).dbhM / 2) * frame.scale;
  return {
    strap: atHead ? hang.head : hang.foot,
    anchor: onPaper(frame, atHead ? hang.shape.headAnchor : hang.shape.footAnchor),
    base,
    barkX: base[0] + out * radius,
    out,
  };
}

/** Room beside the outer bark [px]. */
const ABOUT_PX = 120;

/** Strap height above the ground at that tree, with the body mark of whoever sets it. */
export function strapHeight(facts: BerthFacts, frame: SideFrame, end: End, words: Words): Item[] {
  const { anchor, base, out, barkX } = placeOf(facts, frame, end);
  const x = end === "head" ? 52 : frame.rightX - 52;
  const middle = (anchor[1] + base[1]) / 2 + 26;
  if (end === "foot" && !facts.berth.groundKnown) {
    const width = frame.rightX - 12 - barkX - 18;
    const note = { size: TYPE.note, weight: 600, halo: "paper", width, leading: 20 } as const;
    return [...wrapped(levelText(facts, "short"), [barkX + 18, anchor[1] - 4], note, words).items];
  }
  const unsure = facts.berth.hang.band[`${end}.strapHeightM`];
  const style = { anchor: out === -1 ? "start" : "end", halo: "paper" } as const;
  const edge = out === -1 ? 12 : frame.rightX - 12;
  const small = { size: TYPE.note, width: ABOUT_PX, leading: 19, mostLines: 2, ...style } as const;
  const about =
    unsure === undefined
      ? undefined
      : wrapped(aboutText(unsure), [edge, middle + 35], { ...small, fill: "soft" }, words);
  const aboutLines = about?.lines ?? 0;
  const setY = middle + 35 + 19 * aboutLines;
  const helper =
    facts.setter.id === facts.sleeper.id ? undefined : wrapped(setByText(facts), [edge, setY], small, words);
  const lower = middle + 24 + 19.5 * (aboutLines + (helper?.lines ?? 0));
  const mark = bodyMarkText(toldHeightM(facts.berth, end), facts.setter.statureM);
  return [
    dimension([x, anchor[1]], [x, middle - 30], { ...DIM }),
    dimension([x, lower], [x, base[1]], { ...DIM }),
    text(markText(toldHeightM(facts.berth, end)), [edge, middle - 4], { size: 24, weight: 700, ...style }),
    text(mark, [edge, middle + 15], { size: TYPE.note, ...style }),
    ...(about?.items ?? []),
    ...(helper?.items ?? []),
  ];
}

/** The range that still serves, and which rule ends it at each end. */
export function strapRange(facts: BerthFacts, frame: SideFrame, end: End): Item[] {
  const key: HangQuantity = `${end}.strapHeightM`;
  const range = facts.berth.hang.ok[key];
  if (range === undefined || (end === "foot" && !facts.berth.groundKnown)) return [];
  const { strap, base, barkX, out } = placeOf(facts, frame, end);
  const yOf = (heightM: number): number => base[1] - heightM * frame.scale;
  const x = out === -1 ? barkX - 22 - BAND_WIDTH : barkX + 22;
  const unsure = facts.berth.hang.band[key];
  const band = okBand({
    x,
    towards: out === -1 ? 1 : -1,
    range,
    planned: strap.strapHeightM,
    yOf,
    ...(unsure === undefined ? {} : { unsure }),
  });
  const at = out === -1 ? x + BAND_WIDTH + 4 : x - 4;
  const anchor = out === -1 ? "end" : "start";
  const note = { size: TYPE.note, anchor, halo: "paper" } as const;
  const numbers = { ...note, weight: 600 } as const;
  const [top, bottom] = [yOf(range.high), yOf(range.low)];
  return [
    band,
    text(limitText(range.bindsHigh), [at, top - 26], note),
    text(quantity("length", range.high, 2), [at, top - 8], numbers),
    text(quantity("length", range.low, 2), [at, bottom + 19], numbers),
    text(limitText(range.bindsLow), [at, bottom + 37], note),
  ];
}
