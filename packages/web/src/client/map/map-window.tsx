import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useRef } from "preact/hooks";
import { Button } from "../ui/button.tsx";
import { WORDS } from "../words.ts";
import { Gestures } from "./gestures.ts";
import { panned, placeAt, shiftBetween, zoomed, type View } from "./view.ts";

interface MapWindowProps {
  /** The view the picture inside was drawn for. */
  readonly drawn: View;
  /** Whether drawing anew takes so long that it has to wait until the gesture ends. */
  readonly slow: boolean;
  readonly onRest: (view: View) => void;
  readonly onWhole: () => void;
  /** What lies under a press, topmost first: "tree/K12", "berth/3"; and where on the ground that is [m]. */
  readonly onPick: (refs: readonly string[], place: View["centreM"]) => void;
  readonly children: ComponentChildren;
  /** What stands still over the map. */
  readonly over?: ComponentChildren;
}

const ARROW_PX = 80;
const STEP = 1.4;
/** Share of the window that a picture may be off before it is drawn anew during a gesture. */
const FAR = 0.25;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [ARROW_PX, 0],
  ArrowRight: [-ARROW_PX, 0],
  ArrowUp: [0, ARROW_PX],
  ArrowDown: [0, -ARROW_PX],
};

/**
 * A window on the map. While a gesture lasts, only the picture as a whole is moved and scaled; it is
 * drawn anew once, at rest.
 */
export function MapWindow({ drawn, slow, onRest, onWhole, onPick, children, over }: MapWindowProps) {
  const frame = useRef<HTMLDivElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const gestures = useRef<Gestures>(undefined);
  const latest = useRef({ drawn, slow, onRest, onPick });
  latest.current = { drawn, slow, onRest, onPick };
  useEffect(() => {
    if (frame.current === null) return undefined;
    const started = new Gestures(frame.current, latest.current.drawn, {
      moving: (view) => {
        if (sheet.current === null || frame.current === null) return;
        const far = place(sheet.current, latest.current.drawn, view, frame.current);
        if (far && !latest.current.slow) latest.current.onRest(view);
      },
      rest: (view) => latest.current.onRest(view),
      pick: (refs, at) =>
        latest.current.onPick(refs, placeAt(gestures.current?.view ?? latest.current.drawn, at)),
    });
    gestures.current = started;
    return () => started.end();
  }, []);
  useLayoutEffect(() => {
    gestures.current?.show(drawn);
    if (sheet.current !== null && frame.current !== null) {
      place(sheet.current, drawn, gestures.current?.view ?? drawn, frame.current);
    }
  }, [drawn]);
  return (
    <div class="map-window">
      <div
        ref={frame}
        class="map-frame"
        role="application"
        tabIndex={0}
        aria-label={WORDS.map.region}
        onKeyDown={(event) => {
          const view = byKey(event.key, drawn);
          if (view === undefined && event.key !== "0") return;
          event.preventDefault();
          if (view === undefined) onWhole();
          else onRest(view);
        }}
      >
        <div ref={sheet} class="map-sheet">
          {children}
        </div>
      </div>
      <ZoomButtons drawn={drawn} onRest={onRest} onWhole={onWhole} />
      {over}
    </div>
  );
}

function ZoomButtons({ drawn, onRest, onWhole }: Pick<MapWindowProps, "drawn" | "onRest" | "onWhole">) {
  return (
    <div class="map-zoom">
      <Button quick label={WORDS.map.nearer} onPress={() => onRest(zoomed(drawn, STEP))}>
        <Sign path="M5 12H19M12 5V19" />
      </Button>
      <Button quick label={WORDS.map.farther} onPress={() => onRest(zoomed(drawn, 1 / STEP))}>
        <Sign path="M5 12H19" />
      </Button>
      <Button quick label={WORDS.map.whole} onPress={onWhole}>
        <Sign path="M4 9V4H9M15 4H20V9M20 15V20H15M9 20H4V15" />
      </Button>
    </div>
  );
}

function byKey(key: string, view: View): View | undefined {
  const arrow = ARROWS[key];
  if (arrow !== undefined) return panned(view, arrow);
  if (key === "+" || key === "=") return zoomed(view, STEP);
  return key === "-" ? zoomed(view, 1 / STEP) : undefined;
}

/** Moves the picture; says whether it is so far off that it is better drawn anew. */
function place(
  sheet: HTMLElement,
  drawn: View,
  now: View,
  { clientWidth, clientHeight }: HTMLElement,
): boolean {
  const { right, down, scale } = shiftBetween(drawn, now);
  sheet.style.transform = `translate(${right}px, ${down}px) scale(${scale})`;
  const shifted = Math.abs(right) > clientWidth * FAR || Math.abs(down) > clientHeight * FAR;
  return shifted || scale > 1 + FAR * 2 || scale < 1 / (1 + FAR);
}

function Sign({ path }: { readonly path: string }) {
  return (
    <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true">
      <path d={path} fill="none" stroke="currentColor" stroke-width="2.5" />
    </svg>
  );
}
