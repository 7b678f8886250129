import type { PlannedBerth } from "@nightspan/core";
import { length, saySpanWindow } from "@nightspan/edge";
import { asSentence, fill, WORDS } from "../words.ts";

const WIDTH = 360;
/** How much of the figure lies beyond either end of the window. */
const MARGIN = 40;

/** How far apart two such trees may stand for this kit and sleeper, what ends it, and where these two stand. */
export function SpanWindow({ berth }: { readonly berth: PlannedBerth }) {
  const { spanWindow: window, spanM } = berth;
  if (window === undefined) return null;
  const share = (spanM - window.low) / Math.max(window.high - window.low, 0.01);
  const x = MARGIN + Math.min(1, Math.max(0, share)) * (WIDTH - 2 * MARGIN);
  return (
    <section class="span-window">
      <h3>{WORDS.berth.windowTitle}</h3>
      <svg viewBox={`0 0 ${WIDTH} 40`} aria-hidden="true">
        <path class="span-window-line" d={`M0 20H${WIDTH}`} />
        <path class="span-window-band" d={`M${MARGIN} 20H${WIDTH - MARGIN}`} />
        <path class="span-window-end" d={`M${MARGIN} 8V32M${WIDTH - MARGIN} 8V32`} />
        <path class="span-window-here" d={`M${x} 22L${x - 9} 2H${x + 9}Z`} />
      </svg>
      <p>
        {asSentence(saySpanWindow(window))} {fill(WORDS.berth.windowHere, { span: length(spanM) })}
      </p>
    </section>
  );
}
