import { worstVerdict, type Camp, type Finding, type Plan, type PlannedBerth } from "@nightspan/core";
import {
  namesOf,
  robustLine,
  sayDealtAnew,
  sayRefusedPin,
  sayUnplaced,
  sayVerdict,
  spareLines,
  youthLackLines,
} from "@nightspan/edge";
import { sleeperName, treeTag, unlookedEnds } from "../state/camp-names.ts";
import { picked } from "../state/map-look.ts";
import { MapLegend } from "./map-legend.tsx";
import { startPlacing } from "../state/place-store.ts";
import type { Answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { CampVerdict } from "../ui/camp-verdict.tsx";
import { Cautions } from "../ui/cautions.tsx";
import { FindingList } from "../ui/finding-list.tsx";
import { Name } from "../ui/name.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { NumberPlate } from "../ui/number-plate.tsx";
import { TreesLookedAt } from "../ui/trees-looked-at.tsx";
import { fill, WORDS } from "../words.ts";
import { HowFound, WhyFew } from "./why-few.tsx";
import { NextTree } from "./next-tree.tsx";

/** The camp as a list: how many have a berth, the one next job, and every berth, worst first. */
export function CampSheet({ now }: { readonly now: Answer }) {
  const { plan, camp } = now;
  const next = unlookedEnds(plan.berths)[0];
  const { trees, usable, pairs, berths } = plan.supply;
  return (
    <>
      <div class="narrow-only">
        <CampVerdict />
      </div>
      <p class="camp-count">
        <b>{fill(WORDS.map.placed, { placed: plan.placed, asked: plan.asked })}</b>
      </p>
      {youthLackLines(plan, camp).map((line) => (
        <p key={line}>
          <b>{line}</b>
        </p>
      ))}
      {robustLine(plan).map((line) => (
        <p key={line} class="soft">
          {line}
        </p>
      ))}
      {sayDealtAnew(plan, namesOf(camp)).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Unplaced plan={plan} camp={camp} />
      <PinsRefused plan={plan} camp={camp} />
      {plan.placed < plan.asked ? <WhyFew now={now} /> : null}
      <AboutAll findings={plan.findings.filter(isTrouble)} camp={camp} />
      <TreesLookedAt looked={plan.treesLookedAt} />
      {next === undefined ? null : <NextTree end={next} camp={camp} />}
      <h3 class="hidden">{WORDS.map.berths}</h3>
      <ul class="rows">
        {worstBerthsFirst(plan.berths).map((berth) => (
          <li key={berth.id} class="row">
            <BerthRow berth={berth} camp={camp} />
          </li>
        ))}
      </ul>
      <Spares plan={plan} camp={camp} />
      <AboutAll findings={plan.findings.filter((one) => !isTrouble(one))} camp={camp} />
      <p class="note soft">{fill(WORDS.map.supply, { trees, usable, pairs, berths })}</p>
      {plan.placed < plan.asked ? null : <HowFound plan={plan} camp={camp} />}
      <NotChecked plan={plan} />
      <h3 class="hidden">{WORDS.map.legend}</h3>
      <MapLegend widthPx={340} />
      <Cautions />
    </>
  );
}

function BerthRow({ berth, camp }: { readonly berth: PlannedBerth; readonly camp: Camp }) {
  return (
    <Button kind="plain" class="row-main" onPress={() => (picked.value = { kind: "berth", id: berth.id })}>
      <span class="number-place">
        <NumberPlate id={berth.id} verdict={berth.verdict} />
      </span>
      <span class="row-name">
        <Name>{sleeperName(camp, berth.sleeper)}</Name>
        <span class="hidden">, {sayVerdict(berth.verdict)}</span>
      </span>
      <span class="note soft row-tags">
        {fill(WORDS.map.tags, { head: treeTag(camp, berth.headTree), foot: treeTag(camp, berth.footTree) })}
      </span>
    </Button>
  );
}

/** What is found of the camp as a whole: groups and wishes, the night, spares. */
function AboutAll({ findings, camp }: { readonly findings: readonly Finding[]; readonly camp: Camp }) {
  if (findings.length === 0) return null;
  return (
    <section class="about-all">
      <h3>{WORDS.map.aboutAll}</h3>
      <FindingList findings={findings} camp={camp} />
    </section>
  );
}

function isTrouble({ verdict }: Finding): boolean {
  return verdict !== "clear";
}

/** Who sleeps on the ground, and why: as calm as any answer. */
function Unplaced({ plan, camp }: { readonly plan: Plan; readonly camp: Camp }) {
  if (plan.unplaced.length === 0) return null;
  const names = namesOf(camp);
  return (
    <details class="unplaced">
      <summary class="item-top">
        <span class="row-name">
          {plan.unplaced.length === 1
            ? WORDS.map.oneUnplaced
            : fill(WORDS.map.unplaced, { count: plan.unplaced.length })}
        </span>
      </summary>
      <ul>
        {plan.unplaced.map((one) => (
          <li key={one.sleeper}>
            <b>
              <Name>{names.sleeper(one.sleeper)}</Name>
            </b>
            : {WORDS.map.onTheGround} {sayUnplaced(one, names).join(" ")}{" "}
            <Button onPress={() => startPlacing(one.sleeper)}>
              {fill(WORDS.map.put, { name: names.sleeper(one.sleeper) })}
            </Button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Berths kept free for whoever must leave their own. */
function Spares({ plan, camp }: { readonly plan: Plan; readonly camp: Camp }) {
  const lines = spareLines(plan, camp, namesOf(camp));
  if (lines.length === 0) return null;
  return (
    <section class="spares">
      <h3>{WORDS.map.spares}</h3>
      <ul class="sentences">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** Berths that were to be kept and could not be. */
function PinsRefused({ plan, camp }: { readonly plan: Plan; readonly camp: Camp }) {
  const refused = plan.pinsRefused ?? [];
  if (refused.length === 0) return null;
  const names = namesOf(camp);
  return (
    <section class="pins-refused">
      <h3>{WORDS.map.pinsRefused}</h3>
      <ul>
        {refused.map((one) => (
          <li key={one.sleeper}>{sayRefusedPin(one, names)}</li>
        ))}
      </ul>
    </section>
  );
}

function worstBerthsFirst(berths: readonly PlannedBerth[]): readonly PlannedBerth[] {
  const worse = (a: PlannedBerth, b: PlannedBerth): number => {
    if (a.verdict === b.verdict) return 0;
    return worstVerdict([a.verdict, b.verdict]) === a.verdict ? -1 : 1;
  };
  return [...berths].sort(worse);
}
