import { faultCount, toFirstFault } from "../state/field-faults.ts";
import { fill, WORDS } from "../words.ts";
import { Button } from "./button.tsx";

/** How many fields of the page cannot be used as typed; a press jumps to the first. */
export function FaultCount() {
  const count = faultCount.value;
  if (count === 0) return null;
  return (
    <div class="fault-count" role="status">
      <Button onPress={toFirstFault}>
        {count === 1 ? WORDS.app.toMendOne : fill(WORDS.app.toMend, { count })}
      </Button>
    </div>
  );
}
