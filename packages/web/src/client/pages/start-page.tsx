import { useSignal } from "@preact/signals";
import type { CampDocument } from "@nightspan/edge";
import { openCamp } from "@nightspan/edge";
import { useEffect } from "preact/hooks";
import { takeCamp } from "../state/camp-store.ts";
import { forgetCamp, keptCamps } from "../state/kept-camps.ts";
import { openCampFile, openExample } from "../state/open-file.ts";
import { go } from "../state/route.ts";
import { homeOf, startCamp } from "../state/start-camp.ts";
import { today, sayDay } from "../state/today.ts";
import { Button } from "../ui/button.tsx";
import { FileButton } from "../ui/file-button.tsx";
import { Name } from "../ui/name.tsx";
import { PlainTop } from "../ui/plain-top.tsx";
import { fill, WORDS } from "../words.ts";

/** A group in a wood: a new camp, one from a file, or one that is kept here. */
export function StartPage() {
  const name = useSignal("");
  return (
    <div class="plain">
      <PlainTop title={WORDS.start.title} />
      <main id="content" class="plain-page" tabIndex={-1}>
        <p class="lead">{WORDS.start.lead}</p>
        <form
          class="start-new"
          onSubmit={(event) => {
            event.preventDefault();
            startCamp(name.value);
          }}
        >
          <label for="camp-name">{WORDS.start.name}</label>
          <input
            id="camp-name"
            class="input start-name"
            dir="auto"
            autocomplete="off"
            maxLength={120}
            placeholder={WORDS.start.nameGiven}
            value={name.value}
            onInput={(event) => (name.value = event.currentTarget.value)}
          />
          <Button kind="action" size="spot" onPress={() => startCamp(name.value)}>
            {WORDS.start.fresh}
          </Button>
        </form>
        <div class="first-more">
          <FileButton accept=".json,application/json" onFile={(file) => void openCampFile(file)}>
            {WORDS.start.open}
          </FileButton>
          <Button onPress={() => void openExample()}>{WORDS.start.example}</Button>
        </div>
        <KeptCamps />
      </main>
    </div>
  );
}

interface Listed {
  readonly id: string;
  readonly document: CampDocument;
  readonly savedAt: number;
}

function KeptCamps() {
  const camps = useSignal<readonly Listed[]>([]);
  useEffect(() => {
    void listed().then((found) => (camps.value = found));
  }, []);
  if (camps.value.length === 0) return null;
  return (
    <section>
      <h2>{WORDS.start.kept}</h2>
      <ul class="rows">
        {camps.value.map((camp) => (
          <li key={camp.id} class="row">
            <Button
              kind="plain"
              class="row-main"
              onPress={() => {
                takeCamp(camp.document, camp.id);
                go(homeOf(camp.id));
              }}
            >
              <Name>{camp.document.name}</Name>
              <span class="note soft">
                {fill(WORDS.start.changed, { day: sayDay(today(new Date(camp.savedAt))) })}
              </span>
            </Button>
            <Button
              kind="plain"
              label={fill(WORDS.start.forgetName, { name: camp.document.name })}
              onPress={() => {
                void forgetCamp(camp.id);
                camps.value = camps.value.filter(({ id }) => id !== camp.id);
              }}
            >
              {WORDS.start.forget}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

async function listed(): Promise<readonly Listed[]> {
  const kept = await keptCamps().catch(() => []);
  return kept.flatMap(({ id, document, savedAt }) => {
    const outcome = openCamp(document);
    return outcome.ok ? [{ id, document: outcome.value.document, savedAt }] : [];
  });
}
