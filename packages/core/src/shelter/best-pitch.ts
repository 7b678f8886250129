import { pitchList, type Effort } from "./pitch-list.ts";
import { tryPitch, type PitchSite, type PitchTrial, type TarpChoice } from "./pitch-trial.ts";
import type { End, Side } from "./tarp-geometry.ts";
import { wetting } from "./wetting.ts";

export interface BestPitchInput {
  readonly choices: readonly TarpChoice[];
  readonly site: PitchSite;
  readonly effort: Effort;
  /** Highest the ridge cord can be tied [m]. */
  readonly reachM: number;
  /** Least ridge beyond the gathers; wanted room over the hammock; wanted opening. */
  readonly overhangM: number;
  readonly headroomM: number;
  readonly ventM2: number;
  /** How much rain weighs beside the rest: 1 where it is forecast, less where none is. */
  readonly rainWeight: number;
  readonly windEnd?: End;
  readonly leeSide?: Side;
}

export interface BestPitch {
  readonly best: PitchTrial;
  /** Pitches that no other beats in wetting, room and side load together, the best among them; driest first. */
  readonly tradeOff: readonly PitchTrial[];
  readonly looked: number;
}

/**
 * The pitch that keeps a sleeper driest with room to breathe and pegs that bear it.
 *
 *   least of  5 rain · wet/open + Σ shortfalls/wanted + strap on cloth + side load
 *
 * Every listed pitch of every tarp is tried; nothing is left to chance.
 *
 * Shapes   tarps and a berth → one pitch, and the trade-off; nothing where no tarp can be pitched
 * Units    metres, newtons
 * Error    the best of the list, which is coarse: a hand's breadth, ten degrees
 * Source   rain-shade, tarp-geometry; the weights are house-convention (handbook/shelter.md)
 */
export function findBestPitch(input: BestPitchInput): BestPitch | undefined {
  const { choices, site } = input;
  const trials = choices.flatMap((choice) =>
    pitchList({ ...input, cut: choice.cut, berth: site.berth }).map(({ pitch, pegged }) =>
      tryPitch(choice, pitch, pegged, site),
    ),
  );
  const openM2 = meanOpenM2(site);
  let best: PitchTrial | undefined;
  let least = Infinity;
  for (const trial of trials) {
    const cost = costOf(trial, openM2, input);
    if (cost < least - TIE) [best, least] = [trial, cost];
  }
  if (best === undefined) return undefined;
  return { best, tradeOff: tradeOff(best, trials), looked: trials.length };
}

/** Costs nearer than this count as equal, so that the first listed wins on every machine. */
const TIE = 1e-7;

function meanOpenM2({ body, weather, windsFrom }: PitchSite): number {
  const open = windsFrom.map((from) => wetting(body, [], weather, from).wholeM2);
  return open.reduce((sum, wet) => sum + wet, 0) / open.length;
}

/** A fiftieth of the open rain, some 30 mL in an hour of moderate rain, counts as much as a tenth of any shortfall. */
const WET_WEIGHT = 5;
/** Weights: what each full shortfall counts beside a fifth of the open rain. */
const OVERHANG_WEIGHT = 1;
const HEADROOM_WEIGHT = 0.5;
const VENT_WEIGHT = 0.1;
const STRAP_WEIGHT = 0.3;
const LOAD_WEIGHT = 0.05;
/** A pull that any peg feels [N], where nobody measured one. */
const USUAL_PEG_N = 100;
/** Closed ends and pegged edges take time and hide the way out. */
const FUSS_WEIGHT = 0.01;

function costOf(trial: PitchTrial, openM2: number, input: BestPitchInput): number {
  const { room, strapClearM, sideLoadN, pitch, pegged, wetM2 } = trial;
  const overhangM = Math.min(room.overhangM.head, room.overhangM.foot);
  const rubs = [strapClearM.head, strapClearM.foot].filter((clearM) => clearM < STRAP_CLEAR_M).length;
  const holdsN = input.site.pegHoldsN ?? USUAL_PEG_N;
  return (
    (WET_WEIGHT * input.rainWeight * wetM2) / openM2 +
    OVERHANG_WEIGHT * shortfall(overhangM, input.overhangM) +
    HEADROOM_WEIGHT * shortfall(room.headroomM, input.headroomM) +
    VENT_WEIGHT * shortfall(room.ventM2, input.ventM2) +
    STRAP_WEIGHT * rubs +
    LOAD_WEIGHT * (sideLoadN / holdsN) +
    (sideLoadN > holdsN && input.site.pegHoldsN !== undefined ? 1 : 0) +
    shortfall(holdsN, sideLoadN) +
    FUSS_WEIGHT * (pitch.closedEnds.length + pegged.length)
  );
}

/** The strap clears the cloth's end by so much [m]. Common practice: a hand. */
export const STRAP_CLEAR_M = 0.05;

function shortfall(got: number, wanted: number): number {
  return wanted > 0 ? Math.max(0, wanted - got) / wanted : 0;
}

/** Room counts to a square decimetre and a centimetre, wet to a thousandth, load to a newton: no hair splitting. */
function tradeOff(best: PitchTrial, trials: readonly PitchTrial[]): PitchTrial[] {
  const sorted = [...trials].sort((a, b) => a.wetM2 - b.wetM2 || a.sideLoadN - b.sideLoadN);
  const kept: PitchTrial[] = [];
  for (const trial of sorted) {
    if (trial.room.headroomM < 0) continue;
    if (trial === best || !kept.some((other) => isAsGood(other, trial))) kept.push(trial);
  }
  if (kept.length <= MOST_OPTIONS) return kept;
  const step = (kept.length - 1) / (MOST_OPTIONS - 1);
  const spread = Array.from({ length: MOST_OPTIONS }, (_, index) => kept[Math.round(index * step)]);
  return kept.filter((trial) => trial === best || spread.includes(trial));
}

/** More are not read. */
const MOST_OPTIONS = 8;

function isAsGood(a: PitchTrial, b: PitchTrial): boolean {
  return (
    a.wetM2 <= b.wetM2 + 1e-3 &&
    a.room.headroomM >= b.room.headroomM - 0.01 &&
    a.room.ventM2 >= b.room.ventM2 - 0.1 &&
    a.sideLoadN <= b.sideLoadN + 1
  );
}
