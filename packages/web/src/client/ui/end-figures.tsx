import { handMarks, type Camp, type PlannedBerth, type StrapHang } from "@nightspan/core";
import { angle, force, handLength, hanging, levelWords, shortBodyMark } from "@nightspan/edge";
import type { ComponentChildren } from "preact";
import { treeTag } from "../state/camp-names.ts";
import { WORDS } from "../words.ts";

interface EndFiguresProps {
  readonly title: "HEAD" | "FOOT";
  readonly end: StrapHang;
  readonly berth: PlannedBerth;
  readonly camp: Camp;
  readonly treeId: string;
  readonly children: ComponentChildren;
}

/** One tree: the sentence, and its figures in ruled lines. Pulls stand behind "why". */
export function EndFigures({ title, end, berth, camp, treeId, children }: EndFiguresProps) {
  const foot = title === "FOOT";
  const { headHeightM, footHeightM, footOverHeadM, headStrapM, footStrapM } = handMarks(berth);
  return (
    <section class="end">
      <header class="end-top">
        <h2>{title}</h2>
        <span class="soft">{treeTag(camp, treeId)}</span>
      </header>
      <p class="end-sentence">{children}</p>
      <dl class="figures">
        {foot && !berth.groundKnown ? null : (
          <Figure name={WORDS.berth.strapMark}>
            {markWords(foot ? footHeightM : headHeightM, berth, camp)}
          </Figure>
        )}
        {foot ? <Figure name={WORDS.berth.levelAcross}>{levelWords(footOverHeadM)}</Figure> : null}
        <Figure name={WORDS.berth.barkToHammock}>{handLength(foot ? footStrapM : headStrapM)}</Figure>
        <Figure name={WORDS.berth.webbing}>{handLength(end.webbingM)}</Figure>
        <Figure name={WORDS.berth.angle}>{angle(end.angle)}</Figure>
      </dl>
      <details class="why">
        <summary>{WORDS.berth.why}</summary>
        <dl class="figures">
          <Figure name={WORDS.berth.pull}>{pullWords(end.pullN)}</Figure>
          <Figure name={WORDS.berth.sideways}>{pullWords(end.sidewaysN)}</Figure>
          <Figure name={WORDS.berth.down}>{pullWords(end.downN)}</Figure>
        </dl>
      </details>
    </section>
  );
}

function Figure({ name, children }: { readonly name: string; readonly children: string }) {
  return (
    <div class="figure">
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function markWords(heightM: number, berth: PlannedBerth, camp: Camp): string {
  const setter = camp.sleepers.find(({ id }) => id === berth.setBy);
  const up = handLength(heightM);
  return setter === undefined ? up : `${up}, ${shortBodyMark(heightM, setter.statureM)}`;
}

function pullWords(newtons: number): string {
  return `${hanging(newtons)}, ${force(newtons)}`;
}
