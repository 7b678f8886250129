import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Sleeper } from "../../plan/camp.ts";
import type { KitItem, KitState } from "../../plan/kit.ts";
import type { PersonFit } from "../../plan/fit-types.ts";
import { planCamp } from "../plan-camp.ts";
import { camp, hammock, sleeper, webbing } from "../testing/camp.fixture.ts";
import { coolNight, overLayer, plainTarp, underLayer } from "../testing/layers.fixture.ts";

const NIGHT = coolNight({ lowK: 276.15 });

const { name, date = "2027-05-14", rules, groups, defaultsUsed } = camp().build();

const STATE = fc.constantFrom<KitState>("in-use", "in-use", "quarantined", "retired");
const LINE = { count: fc.integer({ min: 0, max: 2 }), state: STATE };

const PERSON = fc.record({
  massKg: fc.constantFrom(22, 40, 70, 140),
  statureM: fc.constantFrom(1.2, 1.45, 1.7, 2.05),
  ageYears: fc.constantFrom(9, 15, 16, 40),
});
const HAMMOCK = fc.record({
  ...LINE,
  lengthM: fc.constantFrom(2.6, 2.9, 3.35),
  maxUserKg: fc.constantFrom(60, 100, 150),
  layers: fc.constantFrom(1, 2),
  net: fc.boolean(),
});
const STRAPS = fc.record({
  ...LINE,
  strapLengthM: fc.constantFrom(1.2, 2.5, 5),
  strapWidthM: fc.constantFrom(0.02, 0.025, 0.05),
});
const TARP = fc.record({ ...LINE, ridgeM: fc.constantFrom(2.6, 3.1, 3.6) });
const UNDER = fc.record({
  ...LINE,
  form: fc.constantFrom("mat" as const, "underblanket" as const),
  limitK: fc.constantFrom(262, 275),
  fitsNet: fc.boolean(),
});
const OVER = fc.record({ ...LINE, comfortK: fc.constantFrom(262, 275) });

const STORE = fc
  .tuple(
    fc.array(HAMMOCK, { minLength: 1, maxLength: 3 }),
    fc.array(STRAPS, { minLength: 1, maxLength: 2 }),
    fc.array(TARP, { maxLength: 2 }),
    fc.array(UNDER, { maxLength: 3 }),
    fc.array(OVER, { maxLength: 3 }),
  )
  .map(([hammocks, straps, tarps, unders, overs]): KitItem[] => [
    ...hammocks.map((but, at) => hammock(`h${at}`, but)),
    ...straps.map((but, at) => webbing(`w${at}`, but)),
    ...tarps.map((but, at) => plainTarp(`t${at}`, but)),
    ...unders.map((but, at) => underLayer(`u${at}`, but)),
    ...overs.map((but, at) => overLayer(`o${at}`, but)),
  ]);

function fitted(sleepers: readonly Sleeper[], kit: readonly KitItem[]): readonly PersonFit[] {
  const plan = planCamp(
    { name, date, rules, groups, defaultsUsed, sleepers, kit, night: NIGHT },
    { engine: "test" },
  );
  if (!plan.ok || plan.value.fit === undefined) throw new Error("nobody was fitted");
  return plan.value.fit.people;
}

/** What of one fit is not as it must be. */
function faultsOf({ parts, slip }: PersonFit, person: Sleeper, kit: readonly KitItem[]): string[] {
  const faults: string[] = [];
  for (const { kind, choices, lacking } of parts) {
    if (choices.length > 2) faults.push(`${kind}: more than two`);
    if (new Set(choices.map(({ item }) => item)).size < choices.length) faults.push(`${kind}: one twice`);
    if (choices.length + lacking.length === 0 && kit.some((line) => line.kind === kind)) {
      faults.push(`${kind}: nothing, and no word why`);
    }
    for (const { item, reasons, marginK } of choices) {
      const line = kit.find(({ id }) => id === item);
      if (line?.state !== "in-use" || line.count === 0) faults.push(`${item}: not to be dealt`);
      if (reasons.length === 0) faults.push(`${item}: no reason`);
      if (marginK !== undefined && (person.ageYears ?? 0) < 16) faults.push(`${item}: a degree for a child`);
      if (line?.kind === "hammock" && person.massKg > (line.maxUserKg ?? Infinity))
        faults.push(`${item}: weak`);
      const broken = reasons.filter(({ verdict }) => verdict !== "clear").map(({ rule }) => rule);
      const isNarrow = line?.kind === "suspension" && line.strapWidthM < rules.strapWidthMinM.value;
      if (isNarrow && !broken.includes("strap.width")) faults.push(`${item}: narrow, and no word of it`);
    }
  }
  const handed = slip.items.flatMap(({ kind, item }) =>
    parts.some((part) => part.kind === kind) ? [item] : [],
  );
  const given = handed.filter((item) => parts.some(({ choices }) => choices[0]?.item === item));
  return given.length === handed.length ? faults : [...faults, "slip: other things than the first choices"];
}

describe("people of every size, and any store", () => {
  it("are offered only what may be dealt and bears them, two at most, each with its reasons", () => {
    fc.assert(
      fc.property(fc.array(PERSON, { minLength: 1, maxLength: 4 }), STORE, (sizes, kit) => {
        const people = sizes.map((size, at) => sleeper(`p${at}`, size));
        const fits = fitted(people, kit);
        expect(fits.map(({ sleeper: id }) => id)).toEqual(people.map(({ id }) => id));
        const faults = fits.flatMap((fit, at) => {
          const person = people[at];
          return person === undefined ? [`nobody ${at}`] : faultsOf(fit, person, kit);
        });
        expect(faults).toEqual([]);
        const handed = fits.flatMap(({ slip }) => slip.items.flatMap(({ item }) => item ?? []));
        for (const { id, count } of kit) {
          expect(handed.filter((item) => item === id).length).toBeLessThanOrEqual(count);
        }
      }),
      { seed: 1, numRuns: 120 },
    );
  });
});
