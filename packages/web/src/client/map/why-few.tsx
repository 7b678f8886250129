import type { Camp, Plan } from "@nightspan/core";
import { sayCounterfactuals } from "@nightspan/edge";
import { explain, explainedPlan } from "../state/explain-store.ts";
import type { Answer } from "../state/plan-store.ts";
import { fill, WORDS } from "../words.ts";

/** Where not everybody has a berth: from trees to berths, what is lost on the way, and what would change it. */
export function WhyFew({ now }: { readonly now: Answer }) {
  const { plan, camp } = now;
  const opens = (event: { readonly currentTarget: HTMLDetailsElement }): void => {
    if (event.currentTarget.open) explain(now);
  };
  return (
    <details class="why-few" key={`${plan.placed} of ${plan.asked}`} onToggle={opens}>
      <summary class="item-top">
        <span class="row-name">{WORDS.map.whyFew}</span>
      </summary>
      <Funnel plan={plan} />
      <p>{boundWords(plan)}</p>
      <h3>{WORDS.map.whatIf}</h3>
      <WhatIf plan={plan} camp={camp} />
    </details>
  );
}

function Funnel({ plan: { supply, placed } }: { readonly plan: Plan }) {
  const { trees, usable, pairs, blockedBy, berths } = supply;
  const lost = (["stem", "dead-tree", "overhead", "obstacle", "hang"] as const).filter(
    (by) => blockedBy[by] > 0,
  );
  return (
    <table class="funnel">
      <tbody>
        <Step count={trees} what="trees" />
        <Step count={usable} what="usable" />
        <Step count={pairs} what="pairs" />
        {lost.map((by) => (
          <Step key={by} count={-blockedBy[by]} what={by} />
        ))}
        <Step count={berths} what="berths" />
        <Step count={placed} what="placed" />
      </tbody>
    </table>
  );
}

interface StepProps {
  readonly count: number;
  readonly what: keyof typeof WORDS.map.funnel;
}

function Step({ count, what }: StepProps) {
  return (
    <tr class={count < 0 ? "funnel-lost" : ""}>
      <td class="funnel-count">{String(count).replace("-", "−")}</td>
      <td>{WORDS.map.funnel[what]}</td>
    </tr>
  );
}

function boundWords({ placed, bound }: Plan): string {
  return placed === bound ? WORDS.map.proven : fill(WORDS.map.notProven, { bound });
}

function WhatIf({ plan, camp }: { readonly plan: Plan; readonly camp: Camp }) {
  const told = explainedPlan(plan)?.counterfactuals;
  if (told === undefined) return <p class="soft">{WORDS.map.explaining}</p>;
  return (
    <ul class="what-if">
      {sayCounterfactuals(told, camp).map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
