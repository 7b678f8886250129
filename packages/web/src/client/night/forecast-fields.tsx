import type { Refusal } from "@nightspan/core";
import { opened } from "../state/camp-store.ts";
import {
  ChoiceField,
  DayField,
  FieldList,
  FlagField,
  NumberField,
  PercentField,
  TextField,
} from "../ui/field.tsx";
import { readAt } from "../state/document-path.ts";
import { setField } from "../state/field-value.ts";
import { readNumber } from "../ui/read-number.ts";
import { TypedField } from "../ui/typed-field.tsx";
import { WORDS } from "../words.ts";

/** The forecast of the whole night, as it is read out. */
export function ForecastFields() {
  return (
    <section>
      <h3 class="section-title">{WORDS.night.forecast}</h3>
      <FieldList>
        <DayField path={["date"]} label={WORDS.night.date} />
        <NumberField path={["night", "low_c"]} label={WORDS.night.low} unit="°C" />
        <NumberField path={["night", "high_c"]} label={WORDS.night.high} unit="°C" />
        <NumberField path={["night", "wind_m_s"]} label={WORDS.night.wind} unit="m/s" />
        <NumberField path={["night", "gust_m_s"]} label={WORDS.night.gust} unit="m/s" />
        <NumberField
          path={["night", "wind_from_deg"]}
          label={WORDS.night.from}
          note={WORDS.night.fromNote}
          unit="°"
        />
        <NumberField path={["night", "rain_mm_h"]} label={WORDS.night.rain} unit="mm/h" hint="0" />
        <PercentField path={["night", "humidity"]} label={WORDS.night.humidity} hint="80" />
        <PercentField path={["night", "cloud"]} label={WORDS.night.cloud} hint="0" />
        <ChoiceField
          path={["night", "thunder"]}
          label={WORDS.night.thunder}
          choices={(["", "none", "possible", "likely"] as const).map((word) => [
            word,
            WORDS.night.thunderWords[word],
          ])}
        />
        <NumberField path={["night", "wind_height_m"]} label={WORDS.night.height} unit="m" hint="10" />
        <NumberField path={["night", "station_elevation_m"]} label={WORDS.night.station} unit="m" />
      </FieldList>
    </section>
  );
}

/** What makes everybody get up: the leader's own lines, agreed before dark. */
export function StopLines() {
  const blank = opened.value?.document.night?.stop_gust_m_s === undefined;
  return (
    <section>
      <h3 class="section-title">{WORDS.night.stopTitle}</h3>
      {blank ? <p class="stop-blank">{WORDS.night.stopBlank}</p> : null}
      <FieldList>
        <NumberField
          path={["night", "stop_gust_m_s"]}
          label={WORDS.night.stop}
          note={WORDS.night.stopNote}
          unit="m/s"
        />
        <ThunderField name="flash_to_bang_s" label={WORDS.night.flash} unit="s" />
        <ThunderField name="wait_min" label={WORDS.night.wait} unit="min" />
      </FieldList>
    </section>
  );
}

interface ThunderFieldProps {
  readonly name: "flash_to_bang_s" | "wait_min";
  readonly label: string;
  readonly unit: string;
}

/** One half of the thunder rule; the other half is the usual one until it is written too. */
function ThunderField({ name, label, unit }: ThunderFieldProps) {
  const path = ["night", "thunder_rule"] as const;
  const set = (value: unknown) => {
    const rule = {
      flash_to_bang_s: USUAL_30,
      wait_min: USUAL_30,
      ...opened.peek()?.document.night?.thunder_rule,
    };
    return setField(path, value === undefined ? undefined : { ...rule, [name]: value });
  };
  return <NumberField path={[...path, name]} label={label} unit={unit} hint={String(USUAL_30)} set={set} />;
}

/** Both halves of the usual rule: 30 s, 30 min. */
const USUAL_30 = 30;

/** "54.62, −2.85": latitude and longitude in one line, as maps give them. */
function readPlace(text: string): unknown {
  if (text.trim() === "") return undefined;
  const [lat, lon, ...more] = text
    .split(/[,;\s]+/)
    .filter((part) => part !== "")
    .map(readNumber);
  return typeof lat === "number" && typeof lon === "number" && more.length === 0
    ? { lat_deg: lat, lon_deg: lon }
    : text;
}

function writePlace(value: unknown): string {
  const [lat, lon] = [readAt(value, ["lat_deg"]), readAt(value, ["lon_deg"])];
  return typeof lat === "number" && typeof lon === "number" ? `${lat}, ${lon}` : "";
}

/** What else is known of the place stays. */
function setPlace(value: unknown): readonly Refusal[] {
  const place = opened.peek()?.document.place;
  return setField(["place"], typeof value === "object" ? { ...place, ...value } : value);
}

/** Where the camp lies, for sun, cold air and wind. */
export function PlaceFields() {
  return (
    <section>
      <h3 class="section-title">{WORDS.night.place}</h3>
      <FieldList>
        <TypedField
          path={["place"]}
          label={WORDS.night.where}
          note={WORDS.night.whereNote}
          numeric={false}
          read={readPlace}
          write={writePlace}
          set={setPlace}
        />
        <NumberField path={["place", "elevation_m"]} label={WORDS.night.elevation} unit="m" />
        <TextField path={["place", "timezone"]} label={WORDS.night.zone} />
        <FlagField path={["ground", "hollow"]} label={WORDS.night.hollow} silent={false} />
        <ChoiceField
          path={["ground", "canopy"]}
          label={WORDS.night.canopy}
          choices={(["wood", "open"] as const).map((canopy) => [canopy, WORDS.night.canopies[canopy]])}
          silentValue="wood"
        />
      </FieldList>
    </section>
  );
}

/** Time and hands for setting up. */
export function SetUpFields() {
  return (
    <section>
      <h3 class="section-title">{WORDS.night.setUp}</h3>
      <FieldList>
        <NumberField path={["set_up", "per_berth_min"]} label={WORDS.night.perBerth} unit="min" hint="20" />
        <NumberField path={["set_up", "helpers"]} label={WORDS.night.hands} />
        <NumberField path={["set_up", "tree_check_min"]} label={WORDS.night.treeCheck} unit="min" hint="20" />
        <NumberField path={["set_up", "margin_min"]} label={WORDS.night.margin} unit="min" hint="30" />
      </FieldList>
    </section>
  );
}
