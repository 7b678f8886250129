import type { Camp, Plan } from "@nightspan/core";
import {
  costLines,
  namesOf,
  sayBottleneck,
  sayCost,
  sayCounterfactuals,
  sayFailedPairs,
  sayProof,
  supplySteps,
} from "@nightspan/edge";
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
      <p>{[...sayProof(plan), sayCost(plan)].join(" ")}</p>
      <Sentences say={costLines(plan)} />
      <h3>{WORDS.map.whatIf}</h3>
      <WhatIf plan={plan} camp={camp} />
    </details>
  );
}

/** From trees to berths, and how sure it is that no layout does better: for whoever asks. */
export function HowFound({ plan, camp }: { readonly plan: Plan; readonly camp: Camp }) {
  const { counterfactuals = [], bottleneck } = plan;
  return (
    <details class="why how-found">
      <summary>{WORDS.map.howFound}</summary>
      <Funnel plan={plan} />
      <p>{[...sayProof(plan), sayCost(plan)].join(" ")}</p>
      <Sentences say={costLines(plan)} />
      {counterfactuals.length === 0 ? null : (
        <>
          <h3>{WORDS.map.whatIf}</h3>
          <Sentences class="what-if" say={sayCounterfactuals(counterfactuals, camp)} />
        </>
      )}
      {bottleneck === undefined ? null : (
        <>
          <h3>{WORDS.map.decides}</h3>
          <Sentences say={sayBottleneck(bottleneck, camp)} />
        </>
      )}
    </details>
  );
}

/** Each step with what was lost on the way to it. */
function Funnel({ plan }: { readonly plan: Plan }) {
  return (
    <ol class="funnel">
      {supplySteps(plan).map(({ key, text, lost }) => (
        <li key={key}>
          {lost.map((loss) => (
            <span key={loss.by} class="funnel-lost">
              − {loss.text}
            </span>
          ))}
          <b>{text}</b>
        </li>
      ))}
    </ol>
  );
}

function WhatIf({ plan, camp }: { readonly plan: Plan; readonly camp: Camp }) {
  const explained = explainedPlan(plan);
  if (explained === undefined) return <p class="soft">{WORDS.map.explaining}</p>;
  const { counterfactuals = [], bottleneck, unplaced } = explained;
  const names = namesOf(camp);
  return (
    <>
      <Sentences class="what-if" say={sayCounterfactuals(counterfactuals, camp)} />
      {bottleneck === undefined ? null : (
        <>
          <h3>{WORDS.map.decides}</h3>
          <Sentences say={sayBottleneck(bottleneck, camp)} />
        </>
      )}
      {unplaced.map((one) => (
        <details key={one.sleeper} class="why">
          <summary>{fill(WORDS.map.nearly, { name: names.sleeper(one.sleeper) })}</summary>
          <Sentences say={sayFailedPairs(one, names)} />
        </details>
      ))}
    </>
  );
}

function Sentences({ say, class: own = "" }: { readonly say: readonly string[]; readonly class?: string }) {
  return (
    <ul class={`sentences ${own}`}>
      {say.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
