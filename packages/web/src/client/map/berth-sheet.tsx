import { handMarks, worstFirst, type Camp, type PlannedBerth } from "@nightspan/core";
import { handLength, levelWords, namesOf, sayFinding, stepsBetween } from "@nightspan/edge";
import { sleeperName, treeTag, unlookedEnds } from "../state/camp-names.ts";
import { picked } from "../state/map-look.ts";
import { isPinned, pin, unpin } from "../state/pins.ts";
import { startPlacing } from "../state/place-store.ts";
import type { Answer } from "../state/plan-store.ts";
import { BerthVerdict } from "../ui/berth-verdict.tsx";
import { Button } from "../ui/button.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { Name } from "../ui/name.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { PairLook } from "../ui/pair-look.tsx";
import { TreesLookedAt } from "../ui/trees-looked-at.tsx";
import { fill, WORDS } from "../words.ts";
import { SheetTop } from "./sheet-top.tsx";

interface BerthSheetProps {
  readonly now: Answer;
  readonly berth: PlannedBerth;
}

/** One berth in short: who, the verdict, two sentences, and the way in. */
export function BerthSheet({ now: { plan, camp }, berth }: BerthSheetProps) {
  const next = unlookedEnds([berth])[0];
  const tags = { head: treeTag(camp, berth.headTree), foot: treeTag(camp, berth.footTree) };
  return (
    <>
      <BerthVerdict camp={camp} berth={berth} />
      <SheetTop
        title={
          <>
            <NumberPlate id={berth.id} verdict={berth.verdict} />{" "}
            <Name>{sleeperName(camp, berth.sleeper)}</Name>
          </>
        }
      />
      <p class="soft">{fill(WORDS.map.tagsSteps, { ...tags, steps: stepsBetween(berth, camp) })}</p>
      <p>
        {inShort(berth, camp).map((sentence) => (
          <span key={sentence} class="sentence">
            {sentence}{" "}
          </span>
        ))}
      </p>
      <div class="pair-of-buttons">
        {next === undefined || berth.pair !== undefined ? null : (
          <Button kind="action" onPress={() => (picked.value = { kind: "tree", id: next.tree })}>
            {fill(WORDS.map.iAmAt, { tag: treeTag(camp, next.tree) })}
          </Button>
        )}
        <LinkButton to={{ page: "berth", berth: berth.id }}>{WORDS.map.openBerth}</LinkButton>
      </div>
      <Button pressed={isPinned(berth)} onPress={() => (isPinned(berth) ? unpin(berth) : pin(berth))}>
        {isPinned(berth) ? WORDS.map.pinned : WORDS.map.pin}
      </Button>{" "}
      <Button onPress={() => startPlacing(berth.sleeper)}>{WORDS.map.elsewhere}</Button>
      {berth.pair === undefined ? null : <PairLook pairId={berth.pair} />}
      <TreesLookedAt looked={plan.treesLookedAt} />
      <NotChecked plan={plan} />
    </>
  );
}

/** Two sentences: the worst that was found, and what else there is; or where the straps come. */
function inShort(berth: PlannedBerth, camp: Camp): readonly [string, string] {
  const open = berth.findings.filter(({ verdict }) => verdict !== "clear").sort(worstFirst);
  const [worst, ...others] = open.map((finding) => sayFinding(finding, namesOf(camp)));
  if (worst === undefined) {
    const head = handLength(handMarks(berth).headHeightM);
    const level = levelWords(handMarks(berth).footOverHeadM);
    return [WORDS.map.bothLooked, fill(WORDS.map.strapMarks, { head, level })];
  }
  const rest = new Set(others.filter((sentence) => sentence !== worst)).size;
  return [worst, rest === 0 ? WORDS.map.nothingElse : fill(WORDS.map.moreToSee, { count: rest })];
}
