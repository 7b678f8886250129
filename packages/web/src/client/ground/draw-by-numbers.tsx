import type { Camp } from "@nightspan/core";
import { signal } from "@preact/signals";
import { placeFrom, type Place } from "../state/draw-ground.ts";
import { settings, STEP_OF_STATURE } from "../state/settings.ts";
import { Button } from "../ui/button.tsx";
import { readNumber } from "../ui/read-number.ts";
import { WORDS } from "../words.ts";
import { pressGround } from "./draw-state.ts";

const numbers = signal({ from: "", steps: "", bearing: "", east: "", north: "" });
type Field = Exclude<keyof typeof numbers.value, "from">;

/** The same as a press on the map: steps and a bearing from a tree, or metres east and north. */
export function DrawByNumbers({ ground }: { readonly ground: Camp["ground"] }) {
  const trees = ground?.trees ?? [];
  const { from } = numbers.value;
  const tree = trees.find(({ id }) => id === from);
  const start: Place = tree === undefined ? [0, 0] : [tree.xM, tree.yM];
  const put = (at: Place | undefined): void => {
    if (at !== undefined) pressGround([], at);
  };
  return (
    <details class="why">
      <summary>{WORDS.draw.keys}</summary>
      <div class="draw-fields">
        <label class="find">
          {WORDS.draw.from}
          <select
            class="input"
            value={from}
            onChange={(event) => (numbers.value = { ...numbers.value, from: event.currentTarget.value })}
          >
            <option value="">{WORDS.draw.origin}</option>
            {trees.map(({ id, tag }) => (
              <option key={id} value={id}>
                {tag}
              </option>
            ))}
          </select>
        </label>
        <Number name="steps" />
        <Number name="bearing" />
        <Button onPress={() => put(stepped(start))}>{WORDS.draw.put}</Button>
      </div>
      <div class="draw-fields">
        <Number name="east" />
        <Number name="north" />
        <Button onPress={() => put(measured())}>{WORDS.draw.put}</Button>
      </div>
    </details>
  );
}

function Number({ name }: { readonly name: Field }) {
  const unit = name === "east" || name === "north" ? " [m]" : "";
  return (
    <label class="find">
      {WORDS.draw[name] + unit}
      <input
        class="input input-number"
        inputMode="decimal"
        autocomplete="off"
        value={numbers.value[name]}
        onInput={(event) => (numbers.value = { ...numbers.value, [name]: event.currentTarget.value })}
      />
    </label>
  );
}

function stepped(start: Place): Place | undefined {
  const [steps, bearing] = [readNumber(numbers.value.steps), readNumber(numbers.value.bearing)];
  if (typeof steps !== "number" || typeof bearing !== "number") return undefined;
  return placeFrom(start, steps * settings.value.statureM * STEP_OF_STATURE, bearing);
}

function measured(): Place | undefined {
  const [east, north] = [readNumber(numbers.value.east), readNumber(numbers.value.north)];
  return typeof east === "number" && typeof north === "number" ? [east, north] : undefined;
}
