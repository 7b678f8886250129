import { nightTimelineScene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { Arrival } from "../night/arrival.tsx";
import { ForecastFields, PlaceFields, SetUpFields, StopLines } from "../night/forecast-fields.tsx";
import { ForecastSource } from "../night/forecast-source.tsx";
import { HoursTable } from "../night/hours-table.tsx";
import { WindCompass } from "../night/wind-compass.tsx";
import { WorkOrder } from "../night/work-order.tsx";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { answer } from "../state/plan-store.ts";
import { Button } from "../ui/button.tsx";
import { FindingList } from "../ui/finding-list.tsx";
import { FittedScene } from "../ui/fitted-scene.tsx";
import { NotChecked } from "../ui/not-checked.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** The night as it will come: when to arrive, what happens when, what makes everybody get up; and the forecast. */
export function NightPage() {
  const night = opened.value?.document.night;
  return (
    <CampFrame page="night">
      <div class="night-page">
        <h2>{WORDS.night.title}</h2>
        <Working />
        <Timeline />
        <div class="two-sides night-sides">
          <div class="side-list">
            <NightSaid />
            <SetUpFields />
          </div>
          <div class="side-list">
            {night === undefined ? <NoNight /> : <Forecast />}
            <ForecastSource />
            <PlaceFields />
          </div>
        </div>
      </div>
    </CampFrame>
  );
}

function Timeline() {
  const now = answer.value;
  if (now === undefined) return null;
  const { plan, camp } = now;
  return (
    <>
      <Arrival clock={plan.nightClock} camp={camp} />
      {(plan.timeline ?? []).length === 0 ? null : (
        <FittedScene
          of={[plan]}
          scene={(widthPx) => nightTimelineScene(plan, camp, { widthPx, words: { labels, measure } })}
        />
      )}
    </>
  );
}

function NightSaid() {
  const now = answer.value;
  if (now === undefined) return null;
  const { plan, camp } = now;
  const found = plan.nightClock?.findings ?? [];
  return (
    <>
      <StopLines />
      {camp.night === undefined ? null : <WindCompass night={camp.night} clock={plan.nightClock} />}
      <FindingList findings={found} camp={camp} />
      {plan.nightClock === undefined ? null : <WorkOrder clock={plan.nightClock} />}
      <NotChecked plan={plan} />
    </>
  );
}

function Forecast() {
  return (
    <>
      <ForecastFields />
      <HoursTable />
    </>
  );
}

function NoNight() {
  return (
    <section>
      <p class="lead">{WORDS.night.empty}</p>
      <Button
        kind="action"
        size="wide"
        onPress={() => editCamp("", (document) => writeAt(document, ["night"], { low_c: 8, wind_m_s: 3 }))}
      >
        {WORDS.night.add}
      </Button>
    </section>
  );
}
