import { picked } from "../state/map-look.ts";
import { placing } from "../state/place-store.ts";
import { stale, type Answer } from "../state/plan-store.ts";
import { Working } from "../ui/working.tsx";
import { BerthSheet } from "./berth-sheet.tsx";
import { CampSheet } from "./camp-sheet.tsx";
import { PlaceSheet } from "./place-sheet.tsx";
import { SeveralSheet } from "./several-sheet.tsx";
import { TreeSheet } from "./tree-sheet.tsx";

/** What is picked on the map, or the whole camp where nothing is. */
export function MapSheet({ now }: { readonly now: Answer }) {
  return (
    <div class={stale.value ? "sheet-inside sheet-stale" : "sheet-inside"}>
      <Working />
      <Inside now={now} />
    </div>
  );
}

function Inside({ now }: { readonly now: Answer }) {
  const who = placing.value;
  if (who !== undefined) return <PlaceSheet who={who} now={now} />;
  const what = picked.value;
  if (what?.kind === "several") return <SeveralSheet refs={what.refs} camp={now.camp} plan={now.plan} />;
  if (what?.kind === "tree") return <TreeSheet key={what.id} id={what.id} now={now} />;
  const berth = what === undefined ? undefined : now.plan.berths.find(({ id }) => id === what.id);
  return berth === undefined ? <CampSheet now={now} /> : <BerthSheet now={now} berth={berth} />;
}
