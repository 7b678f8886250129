import type { BlockedBy, Plan } from "@nightspan/core";

/** One step of the funnel from trees to berths: how many are left, and what the others were lost to. */
export interface SupplyStep {
  readonly key: "trees" | "usable" | "pairs" | "berths" | "placed";
  readonly count: number;
  readonly text: string;
  /** What was lost on the way to this step; nothing where none was. */
  readonly lost: readonly SupplyLoss[];
}

export interface SupplyLoss {
  readonly by: BlockedBy | "not-usable";
  readonly count: number;
  readonly text: string;
}

/** From trees to people with a berth, step by step, to be listed or drawn. */
export function supplySteps({
  supply,
  placed,
  asked,
  spares = [],
  keptHalfWidthM,
}: Pick<Plan, "supply" | "placed" | "asked" | "spares" | "keptHalfWidthM">): readonly SupplyStep[] {
  const { trees, usable, pairs, berths, blockedBy } = supply;
  const unusable = trees - usable;
  const free = spares.length === 0 ? "" : `, ${spares.length} kept free`;
  const blocked = BLOCKS.map(([by, what]): SupplyLoss => {
    return { by, count: blockedBy[by], text: `${blockedBy[by]} ${what}` };
  });
  return [
    { key: "trees", count: trees, text: `${counted(trees, "tree")} known`, lost: [] },
    {
      key: "usable",
      count: usable,
      text: `${usable} may carry a berth`,
      lost: kept([
        { by: "not-usable", count: unusable, text: `${unusable} too thin, doubtful, dead or kept out` },
      ]),
    },
    { key: "pairs", count: pairs, text: `${counted(pairs, "pair")} at the right distance`, lost: [] },
    {
      key: "berths",
      count: berths,
      text: `${berths} free${room(keptHalfWidthM)}, and somebody can hang there`,
      lost: kept(blocked),
    },
    { key: "placed", count: placed, text: `${placed} of ${asked} have a berth${free}`, lost: [] },
  ];
}

const BLOCKS: readonly (readonly [BlockedBy, string])[] = [
  ["stem", "with a stem in the strip"],
  ["dead-tree", "within reach of a dead or doubtful tree"],
  ["overhead", "under what hangs above"],
  ["obstacle", "too near fire, path, water, building or rock"],
  ["hang", "at which nobody's hammock hangs within the limits"],
];

function kept(losses: readonly SupplyLoss[]): readonly SupplyLoss[] {
  return losses.filter(({ count }) => count > 0);
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? "" : "s"}`;
}

/** Only where the tarps ask for more than the house does. */
function room(halfWidthM: number | undefined): string {
  return halfWidthM === undefined ? "" : ` with ${halfWidthM.toFixed(2)} m to either side for tarp and guys`;
}
