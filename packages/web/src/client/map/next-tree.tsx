import type { Camp } from "@nightspan/core";
import { sleeperName, treeTag, type UnlookedEnd } from "../state/camp-names.ts";
import { picked } from "../state/map-look.ts";
import { Button } from "../ui/button.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";

interface NextTreeProps {
  readonly end: UnlookedEnd;
  readonly camp: Camp;
}

/** The one next job: the tree to go to and look at. */
export function NextTree({ end: { berth, end, tree }, camp }: NextTreeProps) {
  const tag = treeTag(camp, tree);
  const [before = "", after = ""] = fill(end === "head" ? WORDS.map.nextHead : WORDS.map.nextFoot, {
    id: berth.id,
    name: "{name}",
  }).split("{name}");
  const target = berth.pair === undefined ? ({ kind: "tree", id: tree } as const) : undefined;
  return (
    <section class="next">
      <h3 class="next-title">{fill(WORDS.map.next, { tag })}</h3>
      <p>
        {before}
        <Name>{sleeperName(camp, berth.sleeper)}</Name>
        {after}
      </p>
      <Button
        kind="action"
        size="wide"
        onPress={() => (picked.value = target ?? { kind: "berth", id: berth.id })}
      >
        {fill(WORDS.map.iAmAt, { tag })}
      </Button>
    </section>
  );
}
