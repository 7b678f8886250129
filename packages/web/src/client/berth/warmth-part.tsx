import type {
  BalanceWarmth,
  BerthWarmth,
  Camp,
  HalfWarmth,
  Plan,
  PlannedBerth,
  WarmthNote,
} from "@nightspan/core";
import { clockText, heatFlowScene } from "@nightspan/drawing";
import { sleeperName } from "../state/camp-names.ts";
import { FindingList } from "../ui/finding-list.tsx";
import { FittedScene } from "../ui/fitted-scene.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { Figure } from "./figure.tsx";
import { isWarmth } from "./parted-findings.ts";

interface WarmthPartProps {
  readonly plan: Plan;
  readonly camp: Camp;
  readonly berth: PlannedBerth;
}

/** Whether under and over are enough tonight, each by itself, and the one change that helps most. */
export function WarmthPart({ plan, camp, berth }: WarmthPartProps) {
  const { warmth } = berth;
  if (warmth === undefined) return null;
  const said = berth.findings.filter((finding) => isWarmth(finding) && !HALVES.includes(finding.rule));
  return (
    <section class="end" aria-label={WORDS.warmth.title}>
      <header class="end-top">
        <h2>{WORDS.warmth.title}</h2>
      </header>
      <div class="halves">
        <Half name={WORDS.warmth.over} half={warmth.over} weaker={warmth.weaker === "over"} />
        <Half name={WORDS.warmth.under} half={warmth.under} weaker={warmth.weaker === "under"} />
      </div>
      <p class="note">{WORDS.warmth.notFor}</p>
      <FindingList findings={said} camp={camp} />
      {warmth.by === "youth-rule" ? <Youth warmth={warmth} camp={camp} /> : null}
      <details class="why">
        <summary>{WORDS.berth.why}</summary>
        <FittedScene
          of={[plan, berth.id]}
          mostPx={560}
          scene={(widthPx) => heatFlowScene(plan, berth.id, { widthPx })}
        />
        {warmth.by === "balance" ? <Degrees warmth={warmth} /> : null}
        <ul class="sentences note">
          {warmth.notes.map((note) => (
            <li key={note}>{sayNote(note)}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}

/** Said by the two plates above already. */
const HALVES: readonly string[] = ["under.enough", "over.enough", "warmth.weaker-half"];

interface HalfProps {
  readonly name: string;
  readonly half: HalfWarmth;
  readonly weaker: boolean;
}

/** One half: the line of the verdict's own figure tells it without colour. */
function Half({ name, half, weaker }: HalfProps) {
  return (
    <div class={`half half-${half.enough}${weaker ? " half-weaker" : ""}`}>
      <span class="note soft">{name}</span>
      <b class="half-word">{WORDS.warmth.enough[half.enough]}</b>
      <span class="note">{half.item === undefined ? WORDS.warmth.nothing : <Name>{half.item}</Name>}</span>
    </div>
  );
}

type YouthWarmth = Extract<BerthWarmth, { readonly by: "youth-rule" }>;

function Youth({ warmth, camp }: { readonly warmth: YouthWarmth; readonly camp: Camp }) {
  const { spare, checkedBy, checkAt } = warmth;
  return (
    <dl class="figures">
      <Figure name={WORDS.warmth.spare}>
        {spare === undefined ? WORDS.warmth.noSpare : <Name>{spare}</Name>}
      </Figure>
      <Figure name={fill(WORDS.warmth.looksIn, { at: clockText(checkAt, camp.place).said })}>
        {checkedBy === undefined ? WORDS.warmth.nobody : <Name>{sleeperName(camp, checkedBy)}</Name>}
      </Figure>
    </dl>
  );
}

function Degrees({ warmth: { comfortK, limitK, bandK } }: { readonly warmth: BalanceWarmth }) {
  const band = Math.ceil(bandK);
  return (
    <dl class="figures">
      <Figure name={WORDS.warmth.comfort}>{fill(WORDS.warmth.degrees, { at: sayC(comfortK), band })}</Figure>
      <Figure name={WORDS.warmth.limit}>{fill(WORDS.warmth.degrees, { at: sayC(limitK), band })}</Figure>
    </dl>
  );
}

const ZERO_C_IN_K = 273.15;

function sayC(kelvin: number): string {
  const whole = Math.round(kelvin - ZERO_C_IN_K);
  return whole < 0 ? `\u2212${Math.abs(whole)}` : String(whole);
}

function sayNote(note: WarmthNote): string {
  return WORDS.warmth.notes[note];
}
