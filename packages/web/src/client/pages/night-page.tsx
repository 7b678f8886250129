import { opened } from "../state/camp-store.ts";
import { editCamp } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { Button } from "../ui/button.tsx";
import { DayField, FieldList, NumberField } from "../ui/field.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** The day and the forecast of the night. */
export function NightPage() {
  const night = opened.value?.document.night;
  return (
    <CampFrame page="night">
      <div class="list-page">
        <h2>{WORDS.night.title}</h2>
        <Working />
        <FieldList>
          <DayField path={["date"]} label={WORDS.night.date} />
        </FieldList>
        {night === undefined ? <NoNight /> : <NightFields />}
        <p class="note soft">{WORDS.night.notChecked}</p>
      </div>
    </CampFrame>
  );
}

function NoNight() {
  return (
    <>
      <p class="lead">{WORDS.night.empty}</p>
      <Button
        kind="action"
        size="wide"
        onPress={() => editCamp("", (document) => writeAt(document, ["night"], { low_c: 8 }))}
      >
        {WORDS.night.add}
      </Button>
    </>
  );
}

function NightFields() {
  return (
    <FieldList>
      <NumberField path={["night", "low_c"]} label={WORDS.night.low} unit="°C" />
      <NumberField path={["night", "wind_m_s"]} label={WORDS.night.wind} unit="m/s" />
      <NumberField path={["night", "gust_m_s"]} label={WORDS.night.gust} unit="m/s" />
      <NumberField path={["night", "wind_from_deg"]} label={WORDS.night.from} unit="°" />
      <NumberField path={["night", "rain_mm_h"]} label={WORDS.night.rain} unit="mm/h" hint="0" />
      <NumberField path={["night", "humidity"]} label={WORDS.night.humidity} hint="0.8" />
      <NumberField path={["night", "cloud"]} label={WORDS.night.cloud} hint="0" />
      <NumberField path={["night", "stop_gust_m_s"]} label={WORDS.night.stop} unit="m/s" />
    </FieldList>
  );
}
