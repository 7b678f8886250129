import { answer, planRefusals } from "../state/plan-store.ts";
import { opened } from "../state/camp-store.ts";
import { picked } from "../state/map-look.ts";
import { CampMap } from "../map/camp-map.tsx";
import { PreliminaryMap } from "../map/preliminary-map.tsx";
import { MapSheet } from "../map/map-sheet.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { RefusalList } from "../ui/refusal-list.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** The wood with its berths, and beside it what is picked or who hangs where. */
export function MapPage() {
  const ground = opened.value?.camp.ground;
  if (ground === undefined || (ground.trees.length === 0 && ground.pairs.length === 0)) return <NoGround />;
  const now = answer.value;
  return (
    <CampFrame page="map">
      <h2 class="hidden">{WORDS.map.title}</h2>
      <div class={picked.value === undefined ? "map-page" : "map-page map-page-picked"}>
        {now === undefined ? <PreliminaryMap /> : <CampMap now={now} />}
        <section class="sheet" key={sheetKey()}>
          <RefusalList refusals={planRefusals.value} />
          {now === undefined ? <Working /> : <MapSheet now={now} />}
        </section>
      </div>
    </CampFrame>
  );
}

/** Another thing picked is another sheet, read from its top. */
function sheetKey(): string {
  const what = picked.value;
  if (what === undefined) return "camp";
  return what.kind === "several" ? "several" : `${what.kind}/${what.id}`;
}

function NoGround() {
  return (
    <CampFrame page="map">
      <div class="empty">
        <svg class="empty-picture" viewBox="0 0 360 120" aria-hidden="true">
          <path class="empty-line" d="M40 8V112M320 8V112M40 24Q180 130 320 24" />
        </svg>
        <p class="lead">{WORDS.ground.empty}</p>
        <LinkButton kind="action" to={{ page: "ground" }}>
          {WORDS.planning.toGround}
        </LinkButton>
      </div>
    </CampFrame>
  );
}
