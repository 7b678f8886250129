import { mapScene, type Scene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { useMemo } from "preact/hooks";
import { answer, type Answer } from "../state/plan-store.ts";
import { Drawing } from "../ui/drawing.tsx";

/** The signs that are on the map, and no others, in a strip of its own. */
export function MapLegend({ widthPx }: { readonly widthPx: number }) {
  const now = answer.value;
  return now === undefined ? null : <Signs now={now} widthPx={widthPx} />;
}

function Signs({ now, widthPx }: { readonly now: Answer; readonly widthPx: number }) {
  const scene = useMemo(() => legendOf(now, widthPx), [now, widthPx]);
  return <Drawing scene={scene} class="legend" />;
}

/** The legend at the foot of the whole map, cut off it. */
function legendOf({ plan, camp }: Answer, widthPx: number): Scene {
  const map = mapScene(plan, camp, { widthPx, words: { labels, measure } });
  const items = map.items.filter((item) => item.class === "ns-legend");
  const { heightPx } = map.view;
  return {
    ...map,
    name: "map-legend",
    ground: "none",
    size: { ...map.size, height: map.size.height - heightPx },
    items: [{ kind: "group", items, move: [0, -heightPx] }],
  };
}
