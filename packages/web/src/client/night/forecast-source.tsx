import type { Refusal } from "@nightspan/core";
import { importForecast, readForecast, readMapping, type ForecastMapping } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { useId } from "preact/hooks";
import { editCamp, opened } from "../state/camp-store.ts";
import { fetchForecast } from "../state/fetch-forecast.ts";
import { remember, settings } from "../state/settings.ts";
import { Button } from "../ui/button.tsx";
import { FileButton } from "../ui/file-button.tsx";
import { Refused } from "../ui/list-import.tsx";
import { fill, WORDS } from "../words.ts";

interface Told {
  readonly words?: string;
  readonly refusals?: readonly Refusal[];
}

/** Where a forecast comes from: a file, or an address that the reader sets. The one before stays until a good one came. */
export function ForecastSource() {
  const told = useSignal<Told>({});
  const take = (text: string): boolean => {
    const refusals = takeForecast(text);
    const hours = opened.peek()?.document.night?.hours?.length ?? 0;
    told.value = refusals.length > 0 ? { refusals } : { words: fill(WORDS.night.read, { count: hours }) };
    return refusals.length === 0;
  };
  return (
    <section class="forecast-source">
      <FileButton
        accept=".csv,text/csv,.json,.covjson,application/json"
        size="wide"
        onFile={(file) => void file.text().then(take)}
      >
        {WORDS.night.open}
      </FileButton>
      <p class="note soft">{WORDS.night.openNote}</p>
      {told.value.words === undefined ? null : <p role="status">{told.value.words}</p>}
      {told.value.refusals === undefined ? null : <Refused refusals={told.value.refusals} />}
      <Mapping />
      <Fetching onText={take} onFailed={(words) => (told.value = { words })} />
    </section>
  );
}

/** Puts a forecast in place of the one in hand, or says everything that stands against it. */
function takeForecast(text: string): readonly Refusal[] {
  const document = opened.peek()?.document;
  if (document === undefined) return [];
  const mapping = mappingOf(settings.peek().mapping);
  if (!mapping.ok) return mapping.refusals;
  const plain = readForecast(text, document);
  const read = plain.ok || mapping.value === undefined ? plain : readForecast(text, document, mapping.value);
  if (!read.ok) return read.refusals;
  const { night, faults } = read.value;
  const bad = read.value.bad.flatMap(({ place, refusals }) =>
    refusals.map((refusal) => ({ ...refusal, field: `${place}, ${refusal.field}` })),
  );
  if (bad.length > 0 || night === undefined) return [...bad, ...faults];
  return editCamp("", (camp) => importForecast(camp, night));
}

type Mapped =
  | { readonly ok: true; readonly value: ForecastMapping | undefined }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

function mappingOf(text: string): Mapped {
  if (text.trim() === "") return { ok: true, value: undefined };
  try {
    const parsed: unknown = JSON.parse(text);
    return readMapping(parsed);
  } catch {
    return {
      ok: false,
      refusals: [{ field: "mapping", got: text.slice(0, 40), need: WORDS.night.mappingNeed }],
    };
  }
}

/** For JSON of another form: where in it the figures stand, kept on this device. */
function Mapping() {
  const id = useId();
  return (
    <details class="item">
      <summary class="item-top">
        <span class="row-name">{WORDS.night.mapping}</span>
      </summary>
      <label class="note soft" for={id}>
        {WORDS.night.mappingNote}
      </label>
      <textarea
        id={id}
        class="input mapping"
        rows={9}
        spellcheck={false}
        dir="ltr"
        placeholder={MAPPING_SHAPE}
        value={settings.value.mapping}
        onInput={(event) => remember({ mapping: event.currentTarget.value })}
      />
    </details>
  );
}

const MAPPING_SHAPE = `{
  "format": "nightspan-mapping/1",
  "hours": "hourly",
  "at": { "path": "time" },
  "air_c": { "path": "temperature", "unit": "°C" },
  "gust_m_s": { "path": "gust", "unit": "km/h" }
}`;

interface FetchingProps {
  /** Takes what came; whether it could be used. */
  readonly onText: (text: string) => boolean;
  readonly onFailed: (words: string) => void;
}

/** Off until an address is written; then on a press, never by itself. */
function Fetching({ onText, onFailed }: FetchingProps) {
  const id = useId();
  const { forecastAddress: address, fetchedAt } = settings.value;
  const fetchIt = async (): Promise<void> => {
    const fetched = await fetchForecast(address.trim());
    if (!fetched.ok) onFailed(fill(WORDS.night.fetchFailed, { why: fetched.why }));
    else if (onText(fetched.text)) remember({ fetchedAt: new Date().toISOString() });
  };
  return (
    <details class="item">
      <summary class="item-top">
        <span class="row-name">{WORDS.night.fetchTitle}</span>
      </summary>
      <p class="note soft">{WORDS.night.fetchNote}</p>
      <label for={id}>{WORDS.night.address}</label>
      <input
        id={id}
        class="input wide-input"
        type="url"
        dir="ltr"
        autocomplete="off"
        placeholder="forecast.csv"
        value={address}
        onInput={(event) => remember({ forecastAddress: event.currentTarget.value })}
      />
      {address.trim() === "" ? null : (
        <Button size="wide" onPress={() => void fetchIt()}>
          {WORDS.night.fetch}
        </Button>
      )}
      {fetchedAt === "" ? null : <p class="note soft">{sayFetched(fetchedAt)}</p>}
    </details>
  );
}

function sayFetched(at: string): string {
  const date = new Date(at);
  const day = date.toLocaleDateString("en-GB", { day: "numeric", month: "short" });
  const time = date.toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  return fill(WORDS.night.fetched, { day, time });
}
