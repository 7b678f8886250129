import type { PlannedBerth } from "@nightspan/core";
import { berthPlanScene, berthScene, warmthNightScene, type Scene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import type { Answer } from "../state/plan-store.ts";
import { partOf } from "../state/route.ts";
import { FittedScene } from "../ui/fitted-scene.tsx";
import { LinkButton } from "../ui/link-button.tsx";
import { WORDS } from "../words.ts";

const VIEWS = ["side", "above", "warm"] as const;
type View = (typeof VIEWS)[number];

interface BerthPictureProps {
  readonly now: Answer;
  readonly berth: PlannedBerth;
}

/** One berth from the side, from above under its tarp, or through the night: one picture at a time. */
export function BerthPicture({ now, berth }: BerthPictureProps) {
  const there = VIEWS.filter((view) => isThere(view, berth));
  const asked = partOf(VIEWS);
  const view = there.find((one) => one === asked) ?? "side";
  return (
    <div class="berth-picture">
      {there.length < 2 ? null : (
        <nav class="part-links berth-views" aria-label={WORDS.berth.views}>
          {there.map((one) => (
            <LinkButton key={one} to={{ page: "berth", berth: berth.id, part: one }} current={one === view}>
              {WORDS.berth[one]}
            </LinkButton>
          ))}
        </nav>
      )}
      <FittedScene
        key={view}
        of={[now.plan, berth.id, view]}
        scene={(widthPx) => sceneOf(view, now, berth.id, widthPx)}
      />
    </div>
  );
}

/** A view that nothing is known for is not offered. */
function isThere(view: View, { tarp, warmth }: PlannedBerth): boolean {
  if (view === "above") return tarp !== undefined;
  return view === "side" || warmth !== undefined;
}

function sceneOf(view: View, { plan, camp }: Answer, id: string, widthPx: number): Scene {
  const drawn = { widthPx, words: { labels, measure } };
  if (view === "above") return berthPlanScene(plan, camp, id, { ...drawn, figures: false });
  return view === "warm" ? warmthNightScene(plan, id, { ...drawn, camp }) : berthScene(plan, camp, id, drawn);
}
