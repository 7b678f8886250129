import { refuse, type Outcome } from "@nightspan/core";
import { accessoryCordDoor } from "./accessory-cord-door.ts";
import { assignmentDoor } from "./assignment-door.ts";
import { catenaryDoor, elasticCatenaryDoor } from "./catenary-doors.ts";
import { cuttingDoor } from "./cutting-door.ts";
import { dewPointDoor } from "./dew-point-door.ts";
import type { Door, ModelAnswer, ModelTools } from "./door.ts";
import { dropSpeedDoor } from "./drop-speed-door.ts";
import { hangDoor } from "./hang-door.ts";
import { layoutDoor } from "./layout-door.ts";
import { rainReachDoor } from "./rain-reach-door.ts";
import { requiredInsulationDoor } from "./required-insulation-door.ts";
import { sleeperBalanceDoor } from "./sleeper-balance-door.ts";
import { sunDoor } from "./sun-door.ts";
import { trunkDoor } from "./trunk-door.ts";
import { twoCableDoor } from "./two-cable-door.ts";
import { windLoadDoor } from "./wind-load-door.ts";

const DOORS: Readonly<Record<string, Door>> = {
  "two-cable": twoCableDoor,
  catenary: catenaryDoor,
  "elastic-catenary": elasticCatenaryDoor,
  hang: hangDoor,
  trunk: trunkDoor,
  "accessory-cord": accessoryCordDoor,
  layout: layoutDoor,
  cutting: cuttingDoor,
  assignment: assignmentDoor,
  "drop-speed": dropSpeedDoor,
  "rain-reach": rainReachDoor,
  "wind-load": windLoadDoor,
  sun: sunDoor,
  "dew-point": dewPointDoor,
  "required-insulation": requiredInsulationDoor,
  "sleeper-balance": sleeperBalanceDoor,
};

/** The models that are built, by name, each with what it is about. */
export const MODELS: readonly { readonly name: string; readonly about: string }[] = Object.entries(DOORS).map(
  ([name, { about }]) => ({ name, about }),
);

export const MODEL_NAMES: readonly string[] = Object.keys(DOORS);

/** One model by name: input and value in the file's names and units. */
export function runModel(name: string, input: unknown, tools: ModelTools = {}): Outcome<ModelAnswer> {
  const door = Object.hasOwn(DOORS, name) ? DOORS[name] : undefined;
  if (door === undefined) return refuse("NAME", name, `one of ${MODEL_NAMES.join(", ")}`);
  return door.run(input, tools);
}
