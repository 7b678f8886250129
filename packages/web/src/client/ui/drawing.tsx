import { renderSvg, type Scene } from "@nightspan/drawing";
import { labels, measure } from "@nightspan/edge";
import { useMemo } from "preact/hooks";

interface DrawingProps {
  readonly scene: Scene;
  readonly class?: string;
  /** For what is printed: one ink on white, in every theme. */
  readonly paper?: boolean;
}

/** A scene in the page; the stylesheet gives its shapes the colours of the theme. */
export function Drawing({ scene, class: name = "", paper = false }: DrawingProps) {
  const svg = useMemo(() => (paper ? onPaper(scene) : onScreen(scene)), [scene, paper]);
  return <div class={`drawing ${name}`} dangerouslySetInnerHTML={{ __html: svg }} />;
}

function onScreen(scene: Scene): string {
  return renderSvg(scene, { labels, measure, standalone: false });
}

/** A drawing of its own colours, without the first line that only a file needs. */
function onPaper(scene: Scene): string {
  return renderSvg(scene, { labels, measure, theme: "one-ink", standalone: true }).replace(
    /^<\?xml.*\?>\s*/,
    "",
  );
}
