import { doorPicture, type Door } from "@nightspan/drawing";
import { lastCamp } from "../state/camp-store.ts";
import { openCampFile, openExample } from "../state/open-file.ts";
import { hrefOf, type Route } from "../state/route.ts";
import { goOn } from "../state/start-camp.ts";
import { Button } from "../ui/button.tsx";
import { Drawing } from "../ui/drawing.tsx";
import { FileButton } from "../ui/file-button.tsx";
import { Mark } from "../ui/mark.tsx";
import { Name } from "../ui/name.tsx";
import { RedNightButton } from "../ui/red-night-button.tsx";
import { fill, WORDS } from "../words.ts";

/** The first screen: three ways in, and below them what was there before. */
export function FirstPage() {
  return (
    <div class="first">
      <header class="first-top">
        <Mark />
        <h1>{WORDS.app.name}</h1>
        <RedNightButton />
      </header>
      <main id="content" class="doors" tabIndex={-1} aria-label={WORDS.first.doors}>
        <DoorLink door="two-trees" to={{ page: "tonight", step: "look" }} title={WORDS.first.tonight}>
          {WORDS.first.tonightMore}
        </DoorLink>
        <DoorLink door="wood" to={{ page: "start" }} title={WORDS.first.group}>
          {WORDS.first.groupMore}
        </DoorLink>
        <DoorLink door="store" to={{ page: "store" }} title={WORDS.first.store}>
          {WORDS.first.storeMore}
        </DoorLink>
      </main>
      <div class="first-foot">
        <Continue />
        <div class="first-more">
          <FileButton accept=".json,application/json" onFile={(file) => void openCampFile(file)}>
            {WORDS.first.open}
          </FileButton>
          <Button onPress={() => void openExample()}>{WORDS.first.example}</Button>
        </div>
      </div>
    </div>
  );
}

interface DoorLinkProps {
  readonly door: Door;
  readonly to: Route;
  readonly title: string;
  readonly children: string;
}

function DoorLink({ door, to, title, children }: DoorLinkProps) {
  return (
    <a class="door" href={hrefOf(to)}>
      <div class={`door-picture door-picture-${door}`} aria-hidden="true">
        <Drawing scene={doorPicture(door)} />
      </div>
      <div class="door-words">
        <h2>{title}</h2>
        <p>{children}</p>
      </div>
    </a>
  );
}

function Continue() {
  const last = lastCamp.value;
  if (last === undefined) return null;
  const { name, sleepers } = last.document;
  const count = sleepers.length;
  return (
    <Button kind="action" class="first-continue" onPress={goOn}>
      <span>{WORDS.first.continue}</span>
      <span class="first-last">
        <Name>{name}</Name>
      </span>
      <span class="first-count">
        {count === 1 ? WORDS.first.sleeper : fill(WORDS.first.sleepers, { count })}
      </span>
    </Button>
  );
}
