import type { BerthTarp, Camp, Guy, Plan, PlannedBerth } from "@nightspan/core";
import { pitchTradeScene, rainRoseScene } from "@nightspan/drawing";
import { handDifference, handLength, length } from "@nightspan/edge";
import { sleeperName } from "../state/camp-names.ts";
import { FindingList } from "../ui/finding-list.tsx";
import { FittedScene } from "../ui/fitted-scene.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { Figure } from "./figure.tsx";
import { isShelter } from "./parted-findings.ts";

interface TarpPartProps {
  readonly plan: Plan;
  readonly camp: Camp;
  readonly berth: PlannedBerth;
}

/** What the tarp keeps off and what not, plainly; then how it is pitched. Water in figures stands behind "why". */
export function TarpPart({ plan, camp, berth }: TarpPartProps) {
  const { tarp } = berth;
  const found = berth.findings.filter(isShelter);
  if (tarp === undefined && found.length === 0) return null;
  return (
    <section class="end" aria-label={WORDS.tarp.title}>
      <header class="end-top">
        <h2>{WORDS.tarp.title}</h2>
        <span class="soft">{tarp === undefined ? null : <Name>{tarp.item}</Name>}</span>
      </header>
      {tarp === undefined ? null : <Covered tarp={tarp} />}
      {tarp === undefined ? null : <Pitch tarp={tarp} camp={camp} berth={berth} />}
      <FindingList findings={found.filter(({ rule }) => !rule.startsWith("rain."))} camp={camp} />
      {tarp === undefined ? null : <WhyTarp tarp={tarp} plan={plan} camp={camp} berth={berth} />}
    </section>
  );
}

/** One plain sentence: what is covered in this wind, and what to do where something is not. */
function Covered({ tarp }: { readonly tarp: BerthTarp }) {
  const open = tarp.wetVerdicts.filter(({ covered }) => !covered);
  if (tarp.wetVerdicts.length === 0) return null;
  if (open.length === 0) return <p class="end-sentence">{WORDS.tarp.allCovered}</p>;
  return (
    <ul class="end-sentence wet-open">
      {open.map(({ part, lowerByM }) => (
        <li key={part}>
          {lowerByM === undefined
            ? fill(WORDS.tarp.open, { part: WORDS.tarp.parts[part] })
            : fill(WORDS.tarp.lower, {
                part: WORDS.tarp.parts[part],
                by: handDifference(Math.max(lowerByM, 0.05)),
              })}
        </li>
      ))}
    </ul>
  );
}

interface PitchProps {
  readonly tarp: BerthTarp;
  readonly camp: Camp;
  readonly berth: PlannedBerth;
}

function Pitch({ tarp, camp, berth }: PitchProps) {
  const { pitch, drip, guys } = tarp;
  const stepM = camp.sleepers.find(({ id }) => id === berth.sleeper)?.stepM ?? 0.7;
  const pegs = guys.filter(({ lengthM }) => lengthM > 0);
  return (
    <dl class="figures">
      <Figure name={WORDS.tarp.ridgeHead}>{handLength(pitch.headTieM)}</Figure>
      <Figure name={WORDS.tarp.ridgeFoot}>{handLength(pitch.footTieM)}</Figure>
      <Figure name={WORDS.tarp.how}>{sayPitch(tarp)}</Figure>
      {pegs.length === 0 ? null : (
        <Figure name={WORDS.tarp.pegs}>{sayPegs(pegs, stepM, sleeperName(camp, berth.sleeper))}</Figure>
      )}
      <Figure name={WORDS.tarp.dripHead}>{handLength(drip.head.fromGatherM)}</Figure>
      <Figure name={WORDS.tarp.dripFoot}>{handLength(drip.foot.fromGatherM)}</Figure>
    </dl>
  );
}

/** Sides and ends in the order somebody would set them. */
function sayPitch({ pitch }: BerthTarp): string {
  const { porch, closedEnds, pegged } = pitch;
  const said = [
    ...(porch === undefined ? [] : [fill(WORDS.tarp.porch, { side: WORDS.tarp.sides[porch] })]),
    ...pegged.map((side) => fill(WORDS.tarp.pegged, { side: WORDS.tarp.sides[side] })),
    ...closedEnds.map((end) => fill(WORDS.tarp.closed, { end: WORDS.tarp.ends[end] })),
  ];
  return said.length === 0 ? WORDS.tarp.bothOpen : said.join(", ");
}

/** How far the pegs lie from the ridge line, in the sleeper's own steps to the half. */
function sayPegs(guys: readonly Guy[], stepM: number, name: string): string {
  const steps = guys.map(({ asideM }) => Math.round((asideM / stepM) * 2) / 2);
  const [least, most] = [Math.min(...steps), Math.max(...steps)];
  const shown = (count: number): string =>
    count % 1 === 0 ? String(count) : `${count < 1 ? "" : Math.floor(count)}½`;
  return least === most
    ? fill(WORDS.tarp.steps, { steps: shown(least), name })
    : fill(WORDS.tarp.stepsRange, { least: shown(least), most: shown(most), name });
}

const ML_H = 3.6e9;

function WhyTarp({ tarp, plan, camp, berth }: TarpPartProps & { readonly tarp: BerthTarp }) {
  const { wet, canopyDrip } = tarp;
  const rate = (m3S: number): string => fill(WORDS.tarp.rate, { ml: Math.round(m3S * ML_H) });
  return (
    <details class="why">
      <summary>{WORDS.berth.why}</summary>
      <dl class="figures">
        <Figure name={WORDS.tarp.onHammock}>{rate(wet.hammockM3S)}</Figure>
        <Figure name={WORDS.tarp.onSleeper}>{rate(wet.sleeperM3S)}</Figure>
        <Figure name={WORDS.tarp.onUnder}>{rate(wet.underM3S)}</Figure>
        <Figure name={WORDS.tarp.canopy}>{rate(canopyDrip.hammockM3S)}</Figure>
        <Figure name={WORDS.tarp.headroom}>{length(tarp.headroomM)}</Figure>
        <Figure name={WORDS.tarp.vent}>{fill(WORDS.tarp.area, { area: tarp.ventM2.toFixed(1) })}</Figure>
      </dl>
      {tarp.rose === undefined ? null : (
        <>
          <h3>{WORDS.tarp.rose}</h3>
          <FittedScene
            of={[plan, berth.id]}
            mostPx={440}
            scene={(widthPx) => rainRoseScene(plan, camp, berth.id, { widthPx })}
          />
        </>
      )}
      {tarp.options === undefined ? null : (
        <>
          <h3>{WORDS.tarp.trade}</h3>
          <FittedScene
            of={[plan, berth.id]}
            mostPx={560}
            scene={(widthPx) => pitchTradeScene(plan, berth.id, { widthPx })}
          />
        </>
      )}
    </details>
  );
}
