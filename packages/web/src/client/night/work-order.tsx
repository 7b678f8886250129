import type { NightClock } from "@nightspan/core";
import { WORDS } from "../words.ts";

/** What is done after what tonight: in foul weather the tarp goes up first. */
export function WorkOrder({ clock }: { readonly clock: NightClock }) {
  return (
    <section>
      <h3 class="section-title">{WORDS.night.order[clock.order]}</h3>
      <ol class="work-order">
        {clock.steps.map((step, place) => (
          <li key={step}>
            <b>{place + 1}</b>
            {WORDS.night.steps[step]}
          </li>
        ))}
      </ol>
    </section>
  );
}
