import { namesOf, repairLines } from "@nightspan/edge";
import type { Answer } from "../state/plan-store.ts";
import { lossOf, mend, planAnew, tryWithout } from "../state/repair-store.ts";
import { Button } from "../ui/button.tsx";
import { fill, WORDS } from "../words.ts";

interface WithoutTreeProps {
  readonly id: string;
  readonly now: Answer;
}

/** Doing without a tree that carries a berth: as few move as can be, or all is planned anew. Said before it is done. */
export function WithoutTree({ id, now }: WithoutTreeProps) {
  const loss = lossOf(id);
  if (loss === undefined) {
    return <Button onPress={() => tryWithout(id, now)}>{WORDS.tree.without}</Button>;
  }
  const { repair } = loss;
  if (repair === undefined) return <p class="soft">{WORDS.tree.withoutWorking}</p>;
  const [mended = "", fresh = ""] = repairLines(repair, namesOf(now.camp));
  return (
    <section class="without-tree">
      <h3>{WORDS.tree.withoutTitle}</h3>
      <p>{mended}</p>
      <Button kind="action" size="wide" onPress={() => mend(loss)}>
        {fill(WORDS.tree.mend, { count: repair.moved.length })}
      </Button>
      <p>{fresh}</p>
      <Button size="wide" onPress={() => planAnew(loss)}>
        {fill(WORDS.tree.planAnew, { count: repair.freshMoved.length })}
      </Button>
      <p class="note soft">{WORDS.tree.mendNote}</p>
    </section>
  );
}
