import { sleeperName, treeTag } from "../state/camp-names.ts";
import type { Answer } from "../state/plan-store.ts";
import { Name } from "../ui/name.tsx";
import { TreePanel } from "../ui/tree-panel.tsx";
import { fill, WORDS } from "../words.ts";
import { WithoutTree } from "./without-tree.tsx";
import { SheetTop } from "./sheet-top.tsx";

interface TreeSheetProps {
  readonly id: string;
  readonly now: Answer;
}

/** One tree: what is known of it, who hangs on it, and what somebody who stands there sees. */
export function TreeSheet({ id, now }: TreeSheetProps) {
  const { plan, camp } = now;
  const carried = plan.berths.filter((berth) => berth.headTree === id || berth.footTree === id);
  return (
    <>
      <SheetTop title={fill(WORDS.tree.title, { tag: treeTag(camp, id) })} />
      {carried.map((berth) => {
        const [before = "", after = ""] = fill(WORDS.tree.carries, { id: berth.id, name: "{name}" }).split(
          "{name}",
        );
        return (
          <p key={berth.id}>
            {before}
            <Name>{sleeperName(camp, berth.sleeper)}</Name>
            {after}
          </p>
        );
      })}
      {carried.length === 0 ? null : <WithoutTree id={id} now={now} />}
      <TreePanel id={id} />
    </>
  );
}
