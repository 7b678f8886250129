import { kept, worstVerdict, type Finding } from "../outcome/finding.ts";
import type { PlannedBerth } from "../plan/plan.ts";
import type { SpareBerth } from "../plan/spare-types.ts";
import { byCodeUnit } from "./order.ts";
import type { PreparedCamp } from "./prepare-camp.ts";
import { isSpare } from "./spare-sleepers.ts";

/** A berth nobody lies at, with what is to be said of its trees and ground. */
export function spareBerth(prepared: PreparedCamp, berth: PlannedBerth): SpareBerth {
  const { id, headTree, footTree, spanM, bearingRad, pair, stepItOut } = berth;
  const findings = berth.findings.filter(({ subject }) => !subject.startsWith("sleeper/"));
  return {
    id,
    headTree,
    footTree,
    spanM,
    ...(bearingRad === undefined ? {} : { bearingRad }),
    ...(pair === undefined ? {} : { pair }),
    stepItOut,
    serves: whoCouldLie(prepared, berth),
    verdict: worstVerdict(findings.map(({ verdict }) => verdict)),
    findings,
  };
}

/** Everybody whose own hang would do there; of very many classes only the first are asked. */
function whoCouldLie({ ground, classes, desk }: PreparedCamp, berth: PlannedBerth): string[] {
  const ends = [berth.headTree, berth.footTree].sort(byCodeUnit);
  const place = ground.places.findIndex(
    ({ first, second, pair }) =>
      ground.anchors[first]?.id === ends[0] && ground.anchors[second]?.id === ends[1] && pair === berth.pair,
  );
  return classes
    .slice(0, CLASSES_ASKED)
    .flatMap(({ members }, index) =>
      desk.hangOf(index, place).ok
        ? members.filter((kit) => !isSpare({ kit })).map(({ sleeper }) => sleeper.id)
        : [],
    )
    .sort(byCodeUnit);
}

/** Hangs that are worked out in full for each spare berth. */
const CLASSES_ASKED = 40;

/** Whether as many are kept free as the house asks for. */
export function spareFindings(found: number, asked: number): Finding[] {
  if (asked === 0) return [];
  return [
    kept(
      {
        rule: "layout.spare",
        source: "house-rules",
        subject: "camp",
        sense: "at-least",
        demand: found,
        limit: asked,
        unit: "1",
      },
      "look-again",
    ),
  ];
}
