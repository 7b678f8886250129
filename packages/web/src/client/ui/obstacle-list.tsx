import type { Obstacle } from "@nightspan/core";
import { length } from "@nightspan/edge";
import { WORDS } from "../words.ts";
import { NumberField, FieldList } from "./field.tsx";

/** What berths keep away from, and how far. */
export function ObstacleList({ obstacles }: { readonly obstacles: readonly Obstacle[] }) {
  if (obstacles.length === 0) return null;
  return (
    <section>
      <h3 class="section-title">{WORDS.ground.obstacles}</h3>
      <FieldList>
        {obstacles.map(({ id, kind, setbackM }, index) => (
          <NumberField
            key={id}
            path={["ground", "obstacles", index, "setback_m"]}
            label={`${WORDS.ground.kinds[kind]}, ${id}`}
            unit="m"
            hint={length(setbackM, 1).replace(/\s*m$/u, "")}
          />
        ))}
      </FieldList>
    </section>
  );
}
