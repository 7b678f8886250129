import { byRule, kept, type Finding } from "../outcome/finding.ts";
import type { RuleKey } from "../outcome/rule-key.ts";
import type { Camp } from "../plan/camp.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { roomFor } from "../site/position-room.ts";
import type { Tree } from "../site/tree.ts";
import { withoutBarredSpecies } from "./barred-species.ts";
import type { BlockedStrip, CampPlaces } from "./camp-places-types.ts";
import { blockedFindings, hazardsOf, type Hazards } from "./findings/surroundings.ts";
import { NO_GROUND } from "./no-ground.ts";
import { statedPlace, TreeNames, type StatedPlace } from "./stated-places.ts";

/** Two trees by the ids of their anchors, first before second, with what is known of them. */
export interface NamedPair {
  readonly ids: readonly [string, string];
  readonly trees: readonly [Tree | undefined, Tree | undefined];
  readonly spanM: number;
  readonly dbhM: readonly [number, number];
  /** Nobody measured the trunks. */
  readonly dbhAssumed: boolean;
  /** What was stated with the pair itself: the health of its trees, and whether it may be used. */
  readonly stated?: Pick<StatedPlace, "conditions" | "use">;
}

/** The pair that two names or a stated pair mean; nothing where nobody says how far apart they stand. */
export function findNamedPair(
  { ground: surveyed = NO_GROUND, rules }: Camp,
  { anchors }: CampPlaces,
  named: { readonly trees?: readonly [string, string]; readonly pair?: string },
): NamedPair | undefined {
  const ground = withoutBarredSpecies(surveyed, rules);
  const names = new TreeNames(ground.trees);
  const idOf = (name: string): string => names.find(name)?.id ?? name;
  const indexOf = new Map(anchors.map(({ id }, index) => [id, index]));
  const wanted = named.trees?.map(idOf);
  const stated = ground.pairs.find(({ id, trees }) =>
    wanted === undefined ? id === named.pair : trees.every((name) => wanted.includes(idOf(name))),
  );
  if (stated !== undefined) {
    const { place, trees, conditions, use } = statedPlace(stated, names, indexOf);
    const ids = [anchors[place.first]?.id ?? "", anchors[place.second]?.id ?? ""] as const;
    const { spanM, dbhM, dbhAssumed } = place;
    return { ids, trees, spanM, dbhM, dbhAssumed, stated: { conditions, use } };
  }
  const [a, b] = (wanted ?? [])
    .map((id) => names.find(id))
    .sort((x, y) => ((x?.id ?? "") < (y?.id ?? "") ? -1 : 1));
  if (a === undefined || b === undefined || a === b) return undefined;
  return mapPair(a, b);
}

/** Two trees of the map, first before second. */
export function mapPair(a: Tree, b: Tree): NamedPair {
  const [east, north] = [b.xM - a.xM, b.yM - a.yM];
  return {
    ids: [a.id, b.id],
    trees: [a, b],
    spanM: Math.sqrt(east * east + north * north),
    dbhM: [a.dbhM, b.dbhM],
    dbhAssumed: false,
  };
}

/** Every house rule that keeps a pair from being a place, with the figures met there. */
export function pairFaults(
  camp: Camp,
  { blocked }: Pick<CampPlaces, "blocked">,
  pair: NamedPair,
  subject: string,
): Finding[] {
  const { rules, ground = NO_GROUND } = camp;
  const strips = blocked.filter(({ trees: [a, b] }) => a.id === pair.ids[0] && b.id === pair.ids[1]);
  const trunks = ([0, 1] as const).flatMap((end) => trunkFault(camp, pair, end));
  return [
    ...spanFaults(rules, pair, subject, ground.offM),
    ...trunks.filter(({ verdict }) => verdict !== "clear"),
    ...pair.trees.flatMap((tree) => (tree === undefined ? [] : conditionFaults(tree))),
    ...statedFaults(pair, subject),
    ...strips.flatMap((strip) => stripFaults(strip, hazardsOf(ground), rules, subject)),
  ];
}

/** A span that is out of the range of the house, less the room that is kept for positions off by so much. */
export function spanFaults(
  { spanMinM, spanMaxM }: HouseRules,
  { spanM, ids }: Pick<NamedPair, "spanM" | "ids">,
  subject: string,
  offM = 0,
): Finding[] {
  const { spanM: roomM } = roomFor({ offM, halfWidthM: 0, spanMinM: spanMinM.value });
  const of = { source: "house-rules", subject, demand: spanM, unit: "m", about: ids } as const;
  return [
    kept({ ...of, rule: "span.least", sense: "at-least", limit: spanMinM.value + roomM }, "do-not-hang"),
    kept({ ...of, rule: "span.most", sense: "at-most", limit: spanMaxM.value - roomM }, "do-not-hang"),
  ].filter(({ verdict }) => verdict !== "clear");
}

function trunkFault({ rules }: Camp, { ids, dbhM, dbhAssumed }: NamedPair, end: 0 | 1): Finding[] {
  if (dbhAssumed) return [];
  return [
    kept(
      {
        rule: "tree.trunk-least",
        source: "house-rules",
        subject: `tree/${ids[end]}`,
        sense: "at-least",
        demand: dbhM[end],
        limit: rules.trunkMinM.value,
        unit: "m",
      },
      "do-not-hang",
    ),
  ];
}

/** Of trees that are on no map, and of a pair that is not to be used. */
function statedFaults({ ids, trees, stated }: NamedPair, subject: string): Finding[] {
  if (stated === undefined) return [];
  const ends = ([0, 1] as const).flatMap((end) =>
    trees[end] === undefined
      ? conditionFaults({ id: ids[end], condition: stated.conditions[end], use: true })
      : [],
  );
  return [...ends, ...(stated.use ? [] : [broken("pair.not-allowed", subject, ids)])];
}

export function conditionFaults({ id, condition, use }: Pick<Tree, "id" | "condition" | "use">): Finding[] {
  const rules: RuleKey[] = [];
  if (condition === "doubtful") rules.push("tree.doubtful");
  if (condition === "dead") rules.push("tree.dead");
  if (!use) rules.push("tree.not-allowed");
  return rules.map((rule) => broken(rule, `tree/${id}`));
}

/** What is in the way of a strip of ground. */
export function stripFaults(
  strip: BlockedStrip,
  hazards: Hazards,
  rules: HouseRules,
  subject: string,
): Finding[] {
  if (strip.by === "stem") return [broken("site.stem", subject, [strip.cause])];
  return blockedFindings(subject, [strip], hazards, rules);
}

/** A rule that is broken without a figure: one fault where none is allowed. */
export function broken(rule: RuleKey, subject: string, about?: readonly string[]): Finding {
  return byRule(
    {
      rule,
      source: rule.startsWith("tree.") || rule === "pair.not-allowed" ? "camp-file" : "house-rules",
      subject,
      sense: "at-most",
      demand: 1,
      limit: 0,
      unit: "1",
      ...(about === undefined ? {} : { about }),
    },
    "do-not-hang",
  );
}
