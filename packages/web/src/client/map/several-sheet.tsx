import type { Camp, Plan } from "@nightspan/core";
import { sleeperName, treeTag } from "../state/camp-names.ts";
import { picked, pickOf } from "../state/map-look.ts";
import { Button } from "../ui/button.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { SheetTop } from "./sheet-top.tsx";

interface SeveralSheetProps {
  readonly refs: readonly string[];
  readonly camp: Camp;
  readonly plan: Plan;
}

/** Several things under one press: the reader says which. */
export function SeveralSheet({ refs, camp, plan }: SeveralSheetProps) {
  return (
    <>
      <SheetTop title={WORDS.map.several} />
      <ul class="several">
        {refs.map((ref) => (
          <li key={ref}>
            <Button size="wide" onPress={() => (picked.value = pickOf(ref))}>
              {nameOf(ref, camp, plan)}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

function nameOf(ref: string, camp: Camp, plan: Plan) {
  const what = pickOf(ref);
  if (what?.kind === "tree") return fill(WORDS.map.tree, { tag: treeTag(camp, what.id) });
  const berth = what?.kind === "berth" ? plan.berths.find(({ id }) => id === what.id) : undefined;
  if (berth === undefined) return ref;
  return (
    <>
      {fill(WORDS.map.berth, { id: berth.id })}, <Name>{sleeperName(camp, berth.sleeper)}</Name>
    </>
  );
}
