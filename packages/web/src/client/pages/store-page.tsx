import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { FitAnswer } from "../fit/fit-answer.tsx";
import { PersonForm } from "../fit/person-form.tsx";
import { ShelvesSource } from "../fit/shelves-source.tsx";
import { Slip } from "../fit/slip.tsx";
import { campId, opened, STORE_ID } from "../state/camp-store.ts";
import { answer, planRefusals } from "../state/plan-store.ts";
import { nextPerson, openStore } from "../state/store-camp.ts";
import { ItemDialog } from "../store/item-dialog.tsx";
import { NewItems } from "../store/new-items.tsx";
import { StoreFiles } from "../store/store-files.tsx";
import { Shelves } from "../store/shelves.tsx";
import { Button } from "../ui/button.tsx";
import { FindingList } from "../ui/finding-list.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { PlainTop } from "../ui/plain-top.tsx";
import { RefusalList } from "../ui/refusal-list.tsx";
import { Working } from "../ui/working.tsx";
import { fill, WORDS } from "../words.ts";

/** The third door: one person, one low, and what the store has for them. No ground is needed. */
export function StorePage() {
  useEffect(() => void openStore(), []);
  return (
    <div class="plain">
      <PlainTop title={WORDS.fit.title} />
      <main id="content" class="store-page" tabIndex={-1}>
        {campId.value === STORE_ID ? <Fit /> : null}
      </main>
    </div>
  );
}

function Fit() {
  const kit = opened.value?.document.kit ?? [];
  const now = answer.value;
  const fit = now?.plan.fit;
  const person = fit?.people[0];
  return (
    <div class="two-sides">
      <div class="side-list screen-only">
        <PersonForm />
        <OnTheShelves count={kit.length} />
      </div>
      <div class="side-list">
        <div class="screen-only side-list">
          <Working />
          <RefusalList refusals={planRefusals.value} />
          {kit.length === 0 ? <p class="lead">{WORDS.fit.noShelves}</p> : null}
          {now === undefined || fit === undefined || person === undefined ? null : (
            <>
              <FitAnswer fit={fit} person={person} camp={now.camp} />
              <FindingList findings={now.plan.findings} camp={now.camp} />
              <NotChecked plan={now.plan} />
            </>
          )}
        </div>
        {now === undefined || person === undefined || kit.length === 0 ? null : (
          <Slip person={person} camp={now.camp} />
        )}
        <div class="screen-only">
          <Button size="wide" onPress={nextPerson}>
            {WORDS.fit.next}
          </Button>
        </div>
      </div>
    </div>
  );
}

/** The shelves themselves, one press away: most people at this door only want the answer. */
function OnTheShelves({ count }: { readonly count: number }) {
  const open = useSignal<string | undefined>(undefined);
  const kit = opened.value?.document.kit ?? [];
  return (
    <details class="item fit-shelves" open={count === 0}>
      <summary class="item-top">
        <span class="row-name">{fill(WORDS.fit.linesOf, { count })}</span>
      </summary>
      <ShelvesSource />
      <Shelves kit={kit} onOpen={(id) => (open.value = id)} />
      <NewItems onAdded={(id) => (open.value = id)} />
      <StoreFiles />
      {open.value === undefined ? null : (
        <ItemDialog id={open.value} onClose={() => (open.value = undefined)} />
      )}
    </details>
  );
}
