import type { Plan } from "@nightspan/core";
import { answer } from "../state/plan-store.ts";
import { press, spotState } from "../state/spot-store.ts";
import { spotPlace } from "../state/spot-things.ts";
import { bothersPage, measurePage, tellPage, whoPage } from "../spot/spot-ask.tsx";
import { SpotFrame } from "../spot/spot-frame.tsx";
import type { SpotPageParts, SpotProps } from "../spot/spot-parts.ts";
import { resultPage, stillPage } from "../spot/spot-result.tsx";
import { BerthPage } from "./berth-page.tsx";

/** On the spot: what can be told, one thing a page, then one thing to change, until it is left as it is. */
export function SpotPage({ id }: { readonly id: string }) {
  const now = answer.value;
  const berth = now?.plan.berths.find((one) => one.id === id);
  if (now === undefined || berth === undefined) return <BerthPage id={id} />;
  const { camp, plan } = now;
  const props: SpotProps = {
    camp,
    berth,
    place: spotPlace(camp, berth),
    state: spotState(id),
    press: (next) => press(id, next),
  };
  const { step, ask, answers } = pageOf(props, plan);
  return (
    <SpotFrame camp={camp} berth={berth} step={step} answers={answers}>
      {ask}
    </SpotFrame>
  );
}

function pageOf(props: SpotProps, plan: Plan): SpotPageParts & { readonly step: 1 | 2 | 3 } {
  const { page, followed } = props.state;
  if (page === "result") return resultPage(props, plan.treesLookedAt);
  if (page === "still") return { step: 3, ...stillPage(props) };
  if (page === "measure") return { step: followed.length > 0 ? 3 : 1, ...measurePage(props) };
  return { step: 1, ...ASKING[page](props) };
}

const ASKING = { who: whoPage, tell: tellPage, bothers: bothersPage } as const;
