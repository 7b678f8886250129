import { worstFirst, type Camp, type Plan } from "@nightspan/core";
import { namesOf, repairLines, sayFinding, sayRefusedPin } from "@nightspan/edge";
import { sleeperName, treeTag } from "../state/camp-names.ts";
import {
  chooseAgain,
  chooseBerth,
  chooseTree,
  stopPlacing,
  takePlacing,
  type Placing,
} from "../state/place-store.ts";
import type { Answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { Name } from "../ui/name.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { fill, WORDS } from "../words.ts";

interface PlaceSheetProps {
  readonly who: Placing;
  readonly now: Answer;
}

/** Somebody is put elsewhere by choice: where, and what that comes to before it is done. */
export function PlaceSheet({ who, now }: PlaceSheetProps) {
  const name = sleeperName(now.camp, who.sleeper);
  return (
    <section class="place-sheet">
      <header class="sheet-top">
        <h2 class="sheet-title">{fill(WORDS.map.putTitle, { name })}</h2>
      </header>
      {who.wanted === undefined ? <Where who={who} now={now} /> : <Cost who={who} now={now} />}
      <Button size="wide" onPress={stopPlacing}>
        {WORDS.map.putLeave}
      </Button>
    </section>
  );
}

/** Two trees on the map, or somebody's berth; by lists for whoever has no pointer. */
function Where({ who, now }: PlaceSheetProps) {
  const [head] = who.trees;
  const { camp, plan } = now;
  return (
    <>
      <p class="lead" role="status">
        {head === undefined ? WORDS.map.putHow : fill(WORDS.map.putHead, { tag: treeTag(camp, head) })}
      </p>
      <details class="why">
        <summary>{WORDS.map.putKeys}</summary>
        <TreeChoice label={WORDS.map.putHeadTree} value={head ?? ""} now={now} />
        {head === undefined ? null : (
          <TreeChoice label={WORDS.map.putFootTree} value="" not={head} now={now} />
        )}
      </details>
      <h3>{WORDS.map.putWith}</h3>
      <ul class="rows">
        {plan.berths
          .filter(({ sleeper }) => sleeper !== who.sleeper)
          .map((berth) => (
            <li key={berth.id} class="row">
              <Button kind="plain" class="row-main" onPress={() => chooseBerth(berth, now)}>
                <span class="number-place">
                  <NumberPlate id={berth.id} verdict={berth.verdict} />
                </span>
                <span class="row-name">
                  <Name>{sleeperName(camp, berth.sleeper)}</Name>
                </span>
              </Button>
            </li>
          ))}
      </ul>
    </>
  );
}

interface TreeChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly not?: string;
  readonly now: Answer;
}

function TreeChoice({ label, value, not, now }: TreeChoiceProps) {
  const trees = (now.camp.ground?.trees ?? []).filter(({ id, use }) => use && id !== not);
  return (
    <label class="find">
      {label}
      <select
        class="input"
        value={value}
        onChange={(event) => {
          if (event.currentTarget.value !== "") chooseTree(event.currentTarget.value, now);
        }}
      >
        <option value="">{WORDS.map.putChoose}</option>
        {trees.map(({ id, tag }) => (
          <option key={id} value={id}>
            {tag}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What was chosen, who would move, what it costs and brings; then the choice to do it. */
function Cost({ who, now }: PlaceSheetProps) {
  const { plan, camp } = now;
  const repair = who.wanted?.repair;
  if (repair === undefined) {
    return (
      <>
        <p class="lead">{choiceWords(who, now)}</p>
        <p class="soft" role="status">
          {WORDS.map.putWorking}
        </p>
      </>
    );
  }
  const { repaired, moved, freshMoved } = repair;
  const names = namesOf(camp);
  const mine = new Set((who.wanted?.pins ?? []).map(({ sleeper }) => sleeper));
  const refused = (repaired.pinsRefused ?? []).filter(({ sleeper }) => mine.has(sleeper));
  const [first = "", fresh = ""] = repairLines(repair, names);
  return (
    <div role="status">
      <p class="lead">{choiceWords(who, now)}</p>
      {refused.length > 0 ? (
        <>
          <h3>{WORDS.map.putRefused}</h3>
          <Sentences say={refused.map((one) => sayRefusedPin(one, names))} />
        </>
      ) : (
        <>
          <p>{countWords(repaired, plan)}</p>
          <h3>{WORDS.map.putNew}</h3>
          <Sentences say={newTrouble(repaired, plan, camp)} />
          <p>{first}</p>
          <Button kind="action" size="wide" onPress={() => takePlacing("few")}>
            {fill(WORDS.map.putFew, { count: moved.length })}
          </Button>
          <p>{fresh}</p>
          <Button size="wide" onPress={() => takePlacing("anew")}>
            {fill(WORDS.map.putAnew, { count: freshMoved.length })}
          </Button>
          <p class="note soft">{WORDS.tree.mendNote}</p>
        </>
      )}
      <Button size="wide" onPress={chooseAgain}>
        {WORDS.map.putAgain}
      </Button>
    </div>
  );
}

function Sentences({ say }: { readonly say: readonly string[] }) {
  return (
    <ul class="sentences">
      {say.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}

function choiceWords({ sleeper, trees, wanted }: Placing, { camp, plan }: Answer): string {
  const [head, foot] = trees;
  if (head !== undefined && foot !== undefined) {
    return fill(WORDS.map.putBetween, { head: treeTag(camp, head), foot: treeTag(camp, foot) });
  }
  const [mine, theirs] = wanted?.pins ?? [];
  const at = plan.berths.find(
    ({ headTree, footTree, pair, sleeper: other }) =>
      other !== sleeper &&
      (pair === undefined
        ? mine?.trees?.includes(headTree) && mine.trees.includes(footTree)
        : pair === mine?.pair),
  );
  const words = theirs === undefined ? WORDS.map.putAt : WORDS.map.putSwap;
  return fill(words, {
    name: sleeperName(camp, sleeper),
    other: at === undefined ? "" : sleeperName(camp, at.sleeper),
  });
}

function countWords(after: Plan, before: Plan): string {
  return fill(WORDS.map.putCount, {
    placed: after.placed,
    asked: after.asked,
    before: before.placed,
    cost: after.cost.toFixed(2),
    was: before.cost.toFixed(2),
  });
}

/** What is to be looked at with this choice and was not before, worst first. */
function newTrouble(after: Plan, before: Plan, camp: Camp): readonly string[] {
  const names = namesOf(camp);
  const troubles = (plan: Plan): readonly string[] =>
    [...plan.findings, ...plan.berths.flatMap(({ findings }) => findings)]
      .filter(({ verdict }) => verdict !== "clear")
      .sort(worstFirst)
      .map((finding) => sayFinding(finding, names));
  const known = new Set(troubles(before));
  const fresh = [...new Set(troubles(after))].filter((sentence) => !known.has(sentence));
  return fresh.length === 0 ? [WORDS.map.putNothing] : fresh;
}
