import type { Camp, Plan, Spot } from "@nightspan/core";
import { CARD, EDGE, HOLE, RULE } from "../card/card-size.ts";
import { dotted } from "../card/card-words.ts";
import { TYPE_MM } from "../colour/tokens.ts";
import { name, quantity, word } from "../scene/names.ts";
import type { Item, Scene } from "../scene/scene.ts";
import { stroke, text } from "../scene/shapes.ts";
import type { TextItem, Words } from "../scene/text-item.ts";
import { wrapped } from "../scene/wrapped.ts";
import type { WordKey } from "../words/english.ts";
import { berthsBySleeper, factsText } from "./sheet-facts.ts";

const RIGHT = CARD.width - EDGE;
const VALUE_X = EDGE + 34;
/** Room for a hand to write [mm]. */
const WRITE = 7;
const NOTE = { size: TYPE_MM.note, leading: TYPE_MM.note * 1.16 } as const;

interface Line {
  readonly label: WordKey;
  /** Nothing: a line to write on. */
  readonly value?: TextItem;
  /** Under the value, in the same box: what to write there. */
  readonly hint?: WordKey;
}

/** A6: where we are, whom to call, when to get everybody up, and where to go. What nobody told is a line to write on. */
export function emergencyCardScene(plan: Plan, camp: Camp, words: Words): Scene {
  const rows = drawnLines(linesOf(plan, camp), 25, words);
  return {
    name: "emergency-card",
    size: CARD,
    title: word("emergency.title"),
    desc: word("emergency.desc"),
    ground: "paper",
    theme: "one-ink",
    items: [
      text(word("emergency.title"), [EDGE, EDGE + 6], {
        size: TYPE_MM.name,
        weight: 700,
        maxWidth: RIGHT - EDGE - HOLE,
      }),
      text(factsText(camp), [EDGE, EDGE + 12], { size: TYPE_MM.note, weight: 500, maxWidth: RIGHT - EDGE }),
      ...rows.items,
      ...orders(camp, rows.bottom + 4.6, words),
    ],
  };
}

function linesOf(plan: Plan, camp: Camp): readonly Line[] {
  const { ground, night, place } = camp;
  const spot = (where: Spot | undefined): TextItem => {
    if (where?.note !== undefined) return name(where.note);
    return word(where?.at === undefined ? "emergency.none" : "emergency.on-map");
  };
  const here = place === undefined ? {} : { value: positionText(place.latDeg, place.lonDeg) };
  const stop =
    night?.stopGustMS === undefined
      ? {}
      : { value: word("emergency.stop-gust", { speed: quantity("speed", night.stopGustMS, 0) }) };
  return [
    { label: "emergency.number" },
    { label: "emergency.here", ...here, hint: "emergency.write" },
    { label: "emergency.meet", value: spot(ground?.meetingPoint) },
    { label: "emergency.muster", value: spot(ground?.muster) },
    { label: "emergency.fallback", value: spot(ground?.fallback) },
    { label: "emergency.leaders", ...leaders(plan, camp) },
    { label: "emergency.first-aider" },
    { label: "emergency.kit" },
    { label: "emergency.hospital" },
    { label: "emergency.stop", ...stop, hint: "emergency.stop-cold" },
  ];
}

function leaders(plan: Plan, camp: Camp): { readonly value?: TextItem } {
  const berths = berthsBySleeper(plan);
  const all = camp.sleepers
    .filter(({ leads }) => leads)
    .map(({ id, name: written }) => {
      const berth = berths.get(id);
      return berth === undefined
        ? name(written)
        : word("emergency.leader", { name: name(written), berth: name(berth) });
    });
  return all.length === 0 ? {} : { value: dotted(all) };
}

function positionText(latDeg: number, lonDeg: number): TextItem {
  const side = (value: number, plus: string, minus: string): TextItem => ({
    said: `${Math.abs(value).toFixed(5)}° ${value < 0 ? minus : plus}`,
  });
  return word("emergency.position", {
    lat: side(latDeg, "north", "south"),
    lon: side(lonDeg, "east", "west"),
  });
}

interface Drawn {
  readonly items: readonly Item[];
  readonly bottom: number;
}

function drawnLines(lines: readonly Line[], top: number, words: Words): Drawn {
  let y = top;
  const items = lines.flatMap(({ label, value, hint }) => {
    const style = { ...NOTE, weight: 700, width: RIGHT - VALUE_X, mostLines: 2 } as const;
    const set = value === undefined ? undefined : wrapped(value, [VALUE_X, y], style, words);
    const below = (set?.lines ?? 0) * NOTE.leading;
    const hinted =
      hint === undefined
        ? []
        : [
            text(word(hint), [VALUE_X, y + below], {
              size: TYPE_MM.note,
              weight: 500,
              maxWidth: RIGHT - VALUE_X,
            }),
          ];
    const lines = (set?.lines ?? 0) + hinted.length;
    const height =
      value === undefined || hint !== undefined ? lines * NOTE.leading + WRITE : lines * NOTE.leading + 3;
    const items = [
      text(word(label), [EDGE, y], { size: TYPE_MM.note, weight: 500, maxWidth: VALUE_X - EDGE - 1 }),
      ...(set?.items ?? []),
      ...hinted,
      stroke([EDGE, y + height - 4.2, RIGHT, y + height - 4.2], {
        stroke: "ink",
        width: RULE.thin,
        cap: "butt",
      }),
    ];
    y += height;
    return items;
  });
  return { items, bottom: y - 4.2 };
}

function orders(camp: Camp, top: number, words: Words): readonly Item[] {
  const wait = quantity("count", (camp.night?.thunderRule?.waitS ?? THUNDER_WAIT_S) / 60, 0);
  const said = [
    word("emergency.thunder", { wait }),
    word("emergency.fall"),
    word("emergency.cut"),
    word("emergency.count", { count: quantity("count", camp.sleepers.length, 0) }),
  ];
  let y = top;
  return said.flatMap((item) => {
    const set = wrapped(item, [EDGE, y], { ...NOTE, weight: 500, width: RIGHT - EDGE }, words);
    y = set.bottom + NOTE.leading * 1.25;
    return set.items;
  });
}

/** Half an hour, where the house says nothing else [s]. */
const THUNDER_WAIT_S = 1800;
