import { mapScene, type MapScene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { useMemo } from "preact/hooks";
import { campId } from "../state/camp-store.ts";
import { explainedPlan } from "../state/explain-store.ts";
import { keepView, mapViews, picked } from "../state/map-look.ts";
import type { Answer } from "../state/plan-store.ts";
import { placing, pressed } from "../state/place-store.ts";
import { settings, STEP_OF_STATURE } from "../state/settings.ts";
import { Drawing } from "../ui/drawing.tsx";
import { useSize } from "../ui/use-size.ts";
import { MapWindow } from "./map-window.tsx";
import { firstView } from "./first-view.ts";
import type { View } from "./view.ts";

const WORDS_OF_DRAWINGS = { labels, measure };

/** The map of the camp in a window as large as its place on the page. */
export function CampMap({ now }: { readonly now: Answer }) {
  const [frame, size] = useSize();
  const { widthPx, heightPx } = size.value ?? { widthPx: 0, heightPx: 0 };
  return (
    <div class="map-place" ref={frame}>
      {widthPx < LEAST_PX || heightPx < LEAST_PX ? null : (
        <Sized now={now} widthPx={widthPx} heightPx={heightPx} />
      )}
    </div>
  );
}

const LEAST_PX = 40;
/** Beyond this, drawing the map takes longer than a frame or two. */
const MANY_TREES = 600;

interface SizedProps {
  readonly now: Answer;
  readonly widthPx: number;
  readonly heightPx: number;
}

function Sized({ now, widthPx, heightPx }: SizedProps) {
  const camp = campId.value ?? "";
  const kept = mapViews.value.get(camp);
  const who = placing.value?.sleeper;
  const moving = who === undefined ? undefined : now.plan.berths.find(({ sleeper }) => sleeper === who)?.id;
  const selected = moving ?? (picked.value?.kind === "berth" ? picked.value.id : undefined);
  const first = useMemo(() => firstView(now, widthPx, heightPx), [now, widthPx, heightPx]);
  const stepM = settings.value.statureM * STEP_OF_STATURE;
  const drawn = kept === "whole" ? undefined : (kept ?? first);
  // Once somebody asked why so few have a berth, the map shows the pairs that nearly serve.
  const plan = explainedPlan(now.plan) ?? now.plan;
  const scene = useMemo(
    () =>
      mapScene(plan, now.camp, {
        widthPx,
        heightPx,
        words: WORDS_OF_DRAWINGS,
        legend: false,
        stepM,
        ...(drawn === undefined ? {} : { centreM: drawn.centreM, pxPerM: drawn.pxPerM }),
        ...(selected === undefined ? {} : { selected }),
      }),
    [plan, drawn, widthPx, heightPx, selected, stepM],
  );
  const shown = useMemo(() => drawn ?? viewOf(scene), [drawn, scene]);
  const { ground, furniture } = useMemo(() => parted(scene), [scene]);
  return (
    <MapWindow
      drawn={shown}
      slow={now.camp.ground !== undefined && now.camp.ground.trees.length > MANY_TREES}
      onRest={(view) => keepView(camp, view)}
      onWhole={() => keepView(camp, "whole")}
      onPick={(refs) => pressed(refs, now)}
      over={<Drawing scene={furniture} class="map-furniture" />}
    >
      <Drawing scene={ground} />
    </MapWindow>
  );
}

function viewOf({ view }: MapScene): View {
  const centreM = [
    view.leftM + view.widthPx / 2 / view.pxPerM,
    view.topM - view.heightPx / 2 / view.pxPerM,
  ] as const;
  return { centreM, pxPerM: view.pxPerM };
}

/** The ground, which moves, and north mark and scale, which stand still. */
function parted(scene: MapScene): { readonly ground: MapScene; readonly furniture: MapScene } {
  const still = scene.items.filter((item) => item.class === "ns-furniture");
  const moving = scene.items.filter((item) => item.class !== "ns-furniture");
  return {
    ground: { ...scene, items: moving },
    furniture: { ...scene, name: "map-furniture", ground: "none", items: still },
  };
}
