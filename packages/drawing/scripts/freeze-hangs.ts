import { writeFileSync } from "node:fs";
import {
  degrees,
  hang,
  radians,
  type Camp,
  type Hang,
  type HangQuantity,
  type Point2,
  type StrapHang,
} from "@nightspan/core";
import { harrowmere } from "../src/fixture/harrowmere.fixture.ts";
import { pacedPairs } from "../src/fixture/variants.fixture.ts";
import { EIGHT, THREE, type Wanted } from "../src/fixture/wanted.fixture.ts";

/**
 * Asks the engine for the hangs that the goldens are drawn from, and writes them down once. Run by hand when drawings
 * should show a newer engine: npx tsx --conditions=camp-source packages/drawing/scripts/freeze-hangs.ts
 */
function main(): void {
  const entries = [
    ...EIGHT.map((wanted) => frozen(harrowmere(), wanted)),
    ...THREE.map((wanted) => frozen(pacedPairs(), wanted)),
  ];
  const head = 'import type { FrozenHang } from "./frozen-hang-type.fixture.ts";\n\n';
  const doc = "/** Made by `scripts/freeze-hangs.ts`: a table of data. */\n";
  const text = `${head}${doc}export const FROZEN_HANGS: Readonly<Record<string, FrozenHang>> = {\n${entries.join("")}};\n`;
  writeFileSync(new URL("../src/fixture/frozen-hangs.fixture.ts", import.meta.url), text);
}

interface Ends {
  readonly spanM: number;
  readonly head: { readonly dbhM: number; readonly elevationM: number };
  readonly foot: { readonly dbhM: number; readonly elevationM: number };
}

function endsOf({ ground }: Camp, head: string, foot: string): Ends {
  const [a, b] = [head, foot].map((id) => ground?.trees.find((tree) => tree.id === id));
  if (a !== undefined && b !== undefined) {
    return {
      spanM: Math.hypot(b.xM - a.xM, b.yM - a.yM),
      head: { dbhM: a.dbhM, elevationM: a.elevationM ?? 0 },
      foot: { dbhM: b.dbhM, elevationM: b.elevationM ?? 0 },
    };
  }
  const pair = ground?.pairs.find(({ trees }) => trees.includes(head) && trees.includes(foot));
  if (pair === undefined) throw new Error(`no trees ${head} and ${foot}`);
  const [first, second] = pair.dbhM;
  const fallM = (pair.fallM ?? 0) * (pair.trees[0] === head ? 1 : -1);
  return {
    spanM: pair.spanM,
    head: { dbhM: first, elevationM: 0 },
    foot: { dbhM: second, elevationM: -fallM },
  };
}

function frozen(camp: Camp, [sleeper, head, foot]: Wanted): string {
  const who = camp.sleepers.find(({ id }) => id === sleeper);
  if (who === undefined) throw new Error(`no sleeper ${sleeper}`);
  const outcome = hang({
    ...endsOf(camp, head, foot),
    hammock: { lengthM: 3, massKg: 0.6, ridgelineM: 2.49 },
    suspension: { type: "tied-webbing", minM: 0 },
    sleeper: { massKg: who.massKg, statureM: who.statureM },
    targets: { angle: degrees(30), footRaiseM: 0.2 },
    limits: {
      angleMin: radians(camp.rules.angleMinRad.value),
      angleMax: radians(camp.rules.angleMaxRad.value),
      reachM: who.reachM,
      lowPointMinM: 0.2,
      seatHeightMinM: 0.2 * who.statureM,
      seatHeightMaxM: 0.32 * who.statureM,
      footRaiseMinM: 0.1,
      footRaiseMaxM: 0.3,
    },
  });
  if (!outcome.ok) throw new Error(outcome.refusals.map(({ field, need }) => `${field}: ${need}`).join("; "));
  return entry(`${head} ${foot}`, outcome.value);
}

function entry(key: string, value: Hang): string {
  const { shape } = value;
  const { ankle, knee, hip, shoulder, head } = shape.body;
  const points = [
    shape.headAnchor,
    shape.footAnchor,
    shape.headGather,
    shape.footGather,
    ankle,
    knee,
    hip,
    shoulder,
    head,
  ];
  const figures = [
    value.ridgelineM ?? 0,
    value.ridgelinePullN ?? 0,
    value.seatHeightM,
    value.lowPointM,
    value.footRaiseM,
    value.levelFootOverHeadM,
    shape.groundFootZM,
  ];
  return `  ${JSON.stringify(key)}: {
    head: ${list(strap(value.head))},
    foot: ${list(strap(value.foot))},
    figures: ${list(figures)},
    okHead: ${ok(value, "head.strapHeightM")},
    okFoot: ${ok(value, "foot.strapHeightM")},
    seatBand: ${list(value.band.seatHeightM ?? [0, 0])},
    points: ${list(points.flat())},
    cloth: ${list(thinned(shape.cloth).flat())},
    sitting: ${list(thinned(shape.clothSitting).flat())},
  },
`;
}

function strap(end: StrapHang): number[] {
  const { strapHeightM, aboveLevelM, strapLengthM, webbingM, angle, pullN, sidewaysN, downN } = end;
  return [strapHeightM, aboveLevelM, strapLengthM, webbingM, angle, pullN, sidewaysN, downN];
}

function ok({ ok: ranges }: Hang, key: HangQuantity): string {
  const range = ranges[key];
  if (range === undefined) throw new Error(`no range for ${key}`);
  return `[${list([range.low, range.high]).slice(1, -1)}, "${range.bindsLow}", "${range.bindsHigh}"]`;
}

/** Forty points are enough for the eye; the last is kept. */
function thinned(points: readonly Point2[]): Point2[] {
  const every = Math.max(1, Math.floor(points.length / 40));
  return points.filter((_, index) => index % every === 0 || index === points.length - 1);
}

function list(values: readonly number[]): string {
  return `[${values.map((value) => Math.round(value * 10_000) / 10_000).join(", ")}]`;
}

main();
