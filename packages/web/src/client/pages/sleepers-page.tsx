import { GroupList } from "../people/group-list.tsx";
import { SleeperRow } from "../people/sleeper-row.tsx";
import { editCamp, opened } from "../state/camp-store.ts";
import { writeAt } from "../state/document-path.ts";
import { Button } from "../ui/button.tsx";
import { Working } from "../ui/working.tsx";
import { fill, WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** Who sleeps, in which group, near whom; and what of them the plan needs. */
export function SleepersPage() {
  const sleepers = opened.value?.document.sleepers ?? [];
  return (
    <CampFrame page="sleepers">
      <div class="two-sides">
        <div class="side-picture">
          <h2>{WORDS.sleepers.title}</h2>
          <GroupList />
        </div>
        <div class="side-list">
          <Working />
          <p class="note soft">{WORDS.sleepers.massNote}</p>
          <ul class="cards-list">
            {sleepers.map((sleeper, index) => (
              <li key={sleeper.id}>
                <SleeperRow sleeper={sleeper} index={index} only={sleepers.length === 1} />
              </li>
            ))}
          </ul>
          <Button kind="action" size="spot" onPress={addSleeper}>
            {WORDS.sleepers.add}
          </Button>
        </div>
      </div>
    </CampFrame>
  );
}

const USUAL_STATURE_M = 1.75;

function addSleeper(): void {
  editCamp("", (document) => {
    const taken = new Set(document.sleepers.map(({ id }) => id));
    let n = document.sleepers.length + 1;
    while (taken.has(`s${n}`)) n += 1;
    const sleeper = { id: `s${n}`, name: fill(WORDS.sleepers.given, { n }), stature_m: USUAL_STATURE_M };
    return writeAt(document, ["sleepers", document.sleepers.length], sleeper);
  });
}
