import { kitSign, type KitKind, type Scene } from "@nightspan/drawing";
import type { KitDocument } from "@nightspan/edge";
import { Drawing } from "../ui/drawing.tsx";
import { WORDS } from "../words.ts";

interface KitFigureProps {
  readonly kind: KitKind;
  readonly state?: KitDocument["state"];
}

/** A thing of the store as it stands on a shelf. What is set aside is barred, what is retired is dashed. */
export function KitFigure({ kind, state = "in-use" }: KitFigureProps) {
  return (
    <span class={`kit-figure kit-${state}`} aria-hidden="true">
      <Drawing scene={sceneOf(kind, state === "retired")} />
    </span>
  );
}

const scenes = new Map<string, Scene>();

function sceneOf(kind: KitKind, retired: boolean): Scene {
  const known = scenes.get(`${kind} ${retired}`);
  if (known !== undefined) return known;
  const scene: Scene = {
    name: `kit-${kind}`,
    size: { width: 52, height: 38, unit: "px" },
    title: { said: WORDS.kit.kinds[kind] },
    desc: { said: WORDS.kit.kinds[kind] },
    ground: "none",
    items: [kitSign(kind, [26, 37], retired)],
  };
  scenes.set(`${kind} ${retired}`, scene);
  return scene;
}
