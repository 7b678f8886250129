import { renderSvg, type Scene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { useMemo } from "preact/hooks";

interface DrawingProps {
  readonly scene: Scene;
  readonly class?: string;
}

/** A scene in the page; the stylesheet gives its shapes the colours of the theme. */
export function Drawing({ scene, class: name = "" }: DrawingProps) {
  // Papers too take their colours from the page: one ink by day and in print, red by night.
  const svg = useMemo(
    () => renderSvg(scene, { labels, measure, theme: "light", standalone: false }),
    [scene],
  );
  return <div class={`drawing ${name}`} dangerouslySetInnerHTML={{ __html: svg }} />;
}
