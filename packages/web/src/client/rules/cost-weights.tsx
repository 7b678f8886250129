import { COST_WEIGHTS, type CostWeights, type Plan, type PlanCostTerm } from "@nightspan/core";
import { length } from "@nightspan/edge";
import { answer } from "../state/plan-store.ts";
import { NumberField } from "../ui/field.tsx";
import { fill, WORDS } from "../words.ts";

const TERMS: readonly (keyof CostWeights)[] = ["span", "wind", "slope", "walk", "spread", "far", "wish"];

/** What each thing counts where trees are chosen, and what it came to in this plan. */
export function CostWeightList() {
  const plan = answer.value?.plan;
  return (
    <section class="rules-part">
      <h3>{WORDS.rules.weights}</h3>
      <p class="note soft">{WORDS.rules.weightsNote}</p>
      <div class="fields">
        {TERMS.map((name) => (
          <div key={name} class="rule">
            <NumberField
              path={["rules", "weights", name]}
              label={WORDS.rules.terms[name]}
              note={WORDS.rules.measures[name]}
              hint={String(COST_WEIGHTS[name])}
              unit="m"
            />
            {plan === undefined ? null : <Cost name={name} plan={plan} />}
          </div>
        ))}
      </div>
    </section>
  );
}

interface CostProps {
  readonly name: PlanCostTerm["name"];
  readonly plan: Plan;
}

/** A bar as long as the term's share of the whole cost. */
function Cost({ name, plan }: CostProps) {
  const terms = plan.costTerms ?? [];
  const term = terms.find((one) => one.name === name);
  const most = Math.max(...terms.map(({ cost }) => cost), 1e-9);
  const cost = term?.cost ?? 0;
  return (
    <p class="cost-line note">
      <svg viewBox="0 0 200 16" preserveAspectRatio="none" aria-hidden="true">
        <path class="cost-rule" d="M0 15H200" />
        <path class="cost-bar" d={`M0 8H${(cost / most) * 200}`} />
      </svg>
      <span>
        {cost === 0 ? WORDS.rules.costsNothing : fill(WORDS.rules.costs, { cost: length(cost, 1) })}
      </span>
    </p>
  );
}
