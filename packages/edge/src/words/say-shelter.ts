import type { Finding, RuleKey } from "@nightspan/core";
import type { Names } from "./names.ts";
import { handDifference, length, speed } from "./quantities.ts";

type ShelterRule = Extract<
  RuleKey,
  | `tarp.${string}`
  | `rain.${string}`
  | `peg.${string}`
  | `guy.${string}`
  | `drip-line.${string}`
  | "strap.rubs-tarp"
  | "strap.crosses-cord"
  | `night.${string}`
>;

type Told = Pick<Finding, "subject" | "demand" | "limit" | "verdict"> & {
  readonly about?: readonly string[] | undefined;
};

/** Words about tarp, rain, wind and the night; none tells a pull. */
export const SHELTER_SENTENCES: Readonly<Record<ShelterRule, (finding: Told, names: Names) => string>> = {
  "tarp.none": () => "Rain is forecast and the store has no tarp for this berth.",
  "tarp.no-pitch": (f) =>
    `No way was found to pitch ${item(f, "the tarp")} here: its ridge would be out of reach.`,
  "tarp.ridge-short": (f) =>
    f.verdict === "clear"
      ? `The ridge of ${item(f, "the tarp")} is long enough for this hammock.`
      : `The ridge of ${item(f, "the tarp")} is ${length(f.demand)}, too short for this hammock: ${length(f.limit)} is asked for.`,
  "tarp.overhang-head": overhang("head"),
  "tarp.overhang-foot": overhang("foot"),
  "tarp.headroom": (f) =>
    f.demand < 0
      ? "The tarp's cloth would touch the hammock."
      : `The lowest cloth is ${length(f.demand)} over the hammock${f.demand < f.limit ? `: less than the ${length(f.limit)} wished for` : `, at least ${length(f.limit)}`}.`,
  "rain.left-side": covered("left side"),
  "rain.right-side": covered("right side"),
  "rain.head-end": covered("head end"),
  "rain.foot-end": covered("foot end"),
  "tarp.diagonal": (f) =>
    f.verdict === "clear"
      ? "Head and feet of a sleeper on the diagonal are well under the tarp."
      : "Head or feet of a sleeper on the diagonal come too near the tarp's end. Shift the tarp or take a longer one.",
  "strap.rubs-tarp": (f) =>
    f.verdict === "clear"
      ? `The ${part(f)} runs clear below the tarp's end.`
      : `The ${part(f)} rubs on the tarp's end. Raise the ridge or shift the tarp.`,
  "strap.crosses-cord": (f) =>
    f.verdict === "clear"
      ? `The ${part(f)} runs clear below the tarp line as far as the tree.`
      : `The tarp line and the ${part(f)} cross. Tie the tarp line above the strap.`,
  "drip-line.outside": (f) =>
    f.demand >= f.limit
      ? `A drip line on the ${part(f)} hangs under the tarp's edge.`
      : `A drip line on the ${part(f)} would hang outside the tarp: water runs in.`,
  "peg.holding": (f) =>
    f.verdict === "clear"
      ? "The guys pull less on their pegs than one was measured to bear in this ground."
      : `In the gust the guys pull ${f.demand > f.limit ? "more" : "nearly as much"} on a peg than one was measured to bear in this ground. Double the pegs or pitch lower.`,
  "peg.not-measured": (f) =>
    f.verdict === "clear"
      ? "The guys pull little on their pegs."
      : "Nobody has measured what a peg bears in this ground. Pull one along its guy with a luggage scale.",
  "guy.stem": (f, names) =>
    `A guy runs against a stem: ${f.about?.[0] === undefined ? "a tree" : names.tree(f.about[0])}. Peg it aside.`,
  "guy.path": (f) => `A guy comes near a path, ${item(f, "the path")}. Mark it, or peg it shorter.`,
  "guy.neighbour": (f) => `A guy runs into the strip of berth ${item(f, "next door")}.`,
  "guy.obstacle": (f) => `A guy runs into ${item(f, "an obstacle")}.`,
  "night.stop-line-blank": (f) =>
    f.verdict === "clear"
      ? "The wind at which everybody gets up is agreed."
      : "Nobody has set the gust at which everybody gets up. Set stop_gust_m_s.",
  "night.gust": (f) =>
    f.demand > f.limit
      ? `Gusts of ${speed(f.demand)} are forecast in the open: over the ${speed(f.limit)} at which everybody gets up. Crowns fail in the gust, however sheltered the hammocks are.`
      : `Gusts of ${speed(f.demand)} are forecast in the open, everybody gets up at ${speed(f.limit)}.`,
  "night.hours-elsewhere": (f) =>
    f.verdict === "clear"
      ? "The forecast's hours are of this night."
      : "The forecast hour by hour is of another night and was left aside. Get one for tonight.",
  "night.cold-pool": (f) =>
    `The camp lies in a hollow. On a night like this it may be ${kelvins(f.demand)} colder there than forecast.`,
  "night.condensation": (f) =>
    f.demand === 0
      ? "Hardly any dew is to be expected under the tarps."
      : `Dew is likely under the tarps for about ${hours(f.demand)}. Leave an end open.`,
  "night.thunder": (f) =>
    f.verdict === "clear"
      ? "No thunder is forecast."
      : `Thunder is ${f.demand >= 2 ? "likely" : "possible"}. Agree now who calls it and where everybody goes: leave the trees for a building or a hard-topped vehicle.`,
  "night.no-dark": (f) =>
    f.demand > 0
      ? "The sun does not rise: look at the trees by the light there is, or by day elsewhere."
      : "It does not get dark that night.",
};

function overhang(end: string) {
  return (f: Told): string => {
    const name = item(f, "the tarp");
    if (f.demand < 0) return `Not covered by ${name}: the hammock's ${end} end.`;
    return f.verdict === "clear"
      ? `Beyond the hammock's ${end} end ${name} reaches ${length(f.demand)}.`
      : `Beyond the hammock's ${end} end ${name} reaches only ${length(f.demand)}, ${length(f.limit)} is asked for.`;
  };
}

/** "Foot end covered", or by how much to lower the tarp. */
function covered(part: string) {
  return (f: Told): string => {
    if (f.demand < f.limit) return `The ${part} is covered in this wind.`;
    const lowerM = Number(f.about?.[0]);
    const what = `The ${part} is not covered in this wind`;
    return Number.isFinite(lowerM)
      ? `${what}: lower the tarp by ${handDifference(Math.max(lowerM, 0.05))}.`
      : `${what}. Close the tarp there, or take a larger one.`;
  };
}

function kelvins(value: number): string {
  return `${value.toFixed(0)}\u00a0°C`;
}

function hours(count: number): string {
  return count === 1 ? "an hour" : `${count.toFixed(0)}\u00a0hours`;
}

function part({ subject }: Told): string {
  return (subject.split("/")[2] ?? "strap").replaceAll("-", " ");
}

function item({ about }: Told, otherwise: string): string {
  return about?.[0] ?? otherwise;
}
