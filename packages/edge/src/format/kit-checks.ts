import type { Refusal } from "@nightspan/core";
import { isCivilDay } from "./fields.ts";
import { field, listAt, numberAt, textAt, textsAt } from "./raw.ts";
import { twice } from "./twice.ts";

/** Faults between the fields of kit: lengths out of order, numbers of pieces, the history of inspections. */
export function kitChecks(kit: readonly unknown[], list = "kit"): readonly Refusal[] {
  return [...twice(kit, list, "id"), ...kit.flatMap((item, index) => itemFaults(item, `${list}[${index}]`))];
}

/** The same of one line. */
export function itemFaults(item: unknown, at: string): readonly Refusal[] {
  return [
    ...notAbove(item, "min_m", "max_m", at),
    ...ridgelineFaults(item, at),
    ...(textAt(item, "kind") === "over" ? notAbove(item, "limit_c", "comfort_c", at) : []),
    ...notAbove(item, "edge_m", "ridge_m", at),
    ...hollowFaults(item, at),
    ...numberFaults(item, at),
    ...inspectionFaults(item, at),
  ];
}

function notAbove(item: unknown, low: string, high: string, at: string): readonly Refusal[] {
  const [least, most] = [numberAt(item, low), numberAt(item, high)];
  if (least === undefined || most === undefined || least <= most) return [];
  return [{ field: `${at}.${low}`, got: least, need: `at most ${high}, which is ${most}` }];
}

function ridgelineFaults(item: unknown, at: string): readonly Refusal[] {
  const [ridgeline, length] = [numberAt(item, "ridgeline_m"), numberAt(item, "length_m")];
  if (ridgeline === undefined || length === undefined || ridgeline < length) return [];
  return [{ field: `${at}.ridgeline_m`, got: ridgeline, need: `less than length_m, which is ${length}` }];
}

/** An edge cut as deep as half its side leaves next to no roof: mistaken, or a figure in centimetres. */
function hollowFaults(item: unknown, at: string): readonly Refusal[] {
  const [hollow, width] = [numberAt(item, "catenary_cut_m"), numberAt(item, "width_m")];
  if (hollow === undefined || width === undefined || hollow <= width / 4) return [];
  const need = `at most a quarter of width_m, which is ${width / 4}`;
  return [{ field: `${at}.catenary_cut_m`, got: hollow, need }];
}

function numberFaults(item: unknown, at: string): readonly Refusal[] {
  const numbers = textsAt(item, "numbers");
  const count = numberAt(item, "count") ?? numbers.length;
  const alike = numbers.flatMap((number, index) => {
    const before = numbers.indexOf(number);
    if (before === index) return [];
    const need = `a number of its own; numbers[${before}] has this one`;
    return [{ field: `${at}.numbers[${index}]`, got: number, need }];
  });
  if (numbers.length <= count) return alike;
  const need = `at most as many as count, which is ${count}`;
  return [...alike, { field: `${at}.numbers`, got: `${numbers.length} numbers`, need }];
}

/** Oldest first; of a piece that has a number; and what is retired stays so. */
function inspectionFaults(item: unknown, at: string): readonly Refusal[] {
  const numbers = textsAt(item, "numbers");
  const retiredOn = new Map<string, string>();
  let last = "";
  return listAt(item, "inspections").flatMap((inspection, index) => {
    const here = `${at}.inspections[${index}]`;
    const faults: Refusal[] = [];
    const on = textAt(inspection, "on") ?? "";
    const number = textAt(inspection, "number");
    if (isCivilDay(on)) {
      if (on < last)
        faults.push({ field: `${here}.on`, got: on, need: `a day not before ${last}: the oldest first` });
      else last = on;
    }
    if (number !== undefined && !numbers.includes(number)) {
      faults.push({ field: `${here}.number`, got: number, need: "one of the line's numbers" });
    }
    const retired = retiredOn.get("") ?? retiredOn.get(number ?? "");
    if (retired !== undefined) {
      const got = field(inspection, "action");
      faults.push({ field: `${here}.action`, got, need: `nothing more: retired on ${retired}, for good` });
    } else if (textAt(inspection, "action") === "retire") retiredOn.set(number ?? "", on);
    return faults;
  });
}
