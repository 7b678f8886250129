import type { Refusal } from "@nightspan/core";
import { groundChecks } from "./ground-checks.ts";
import { kitChecks } from "./kit-checks.ts";
import { nightChecks } from "./night-checks.ts";
import { pinChecks } from "./pin-checks.ts";
import { listAt, numberAt, textAt, textsAt, field } from "./raw.ts";
import { twice } from "./twice.ts";
import { wishChecks } from "./wish-checks.ts";
import { findMassBand } from "./people-schema.ts";

/**
 * Faults between fields, which a schema of single fields cannot see. They look into the raw document, so that
 * they are told at once with the schema's own refusals.
 */
export function crossChecks(document: unknown): readonly Refusal[] {
  return [
    ...groundChecks(document),
    ...ruleChecks(field(document, "rules")),
    ...sleeperChecks(document),
    ...twice(listAt(document, "groups"), "groups", "id"),
    ...kitChecks(listAt(document, "kit")),
    ...nightChecks(document),
    ...pinChecks(document),
  ];
}

function sleeperChecks(document: unknown): readonly Refusal[] {
  const sleepers = listAt(document, "sleepers");
  const ids = idsOf(sleepers);
  const known: Known = { sleepers: ids, groups: idsOf(listAt(document, "groups")), kit: kindsOf(document) };
  return [
    ...twice(sleepers, "sleepers", "id"),
    ...sleepers.flatMap((sleeper, index) => sleeperFaults(sleeper, `sleepers[${index}]`, known)),
    ...wishChecks(document),
  ];
}

interface Known {
  readonly sleepers: ReadonlySet<string>;
  readonly groups: ReadonlySet<string>;
  readonly kit: ReadonlyMap<string, string>;
}

function sleeperFaults(sleeper: unknown, at: string, known: Known): readonly Refusal[] {
  const faults: Refusal[] = [];
  const group = textAt(sleeper, "group");
  if (group !== undefined && !known.groups.has(group)) {
    faults.push({ field: `${at}.group`, got: group, need: "the id of a group in groups" });
  }
  for (const key of ["near", "apart"]) {
    textsAt(sleeper, key).forEach((other, index) => {
      const itself = other === textAt(sleeper, "id");
      if (known.sleepers.has(other) && !itself) return;
      const need = itself ? "somebody else's id" : "the id of a sleeper";
      faults.push({ field: `${at}.${key}[${index}]`, got: other, need });
    });
  }
  return [...faults, ...massFaults(sleeper, at), ...pinFaults(field(sleeper, "kit"), `${at}.kit`, known.kit)];
}

function massFaults(sleeper: unknown, at: string): readonly Refusal[] {
  const mass = numberAt(sleeper, "mass_kg");
  const band = findMassBand(textAt(sleeper, "mass_band") ?? "");
  if (mass === undefined || band === undefined || (mass >= band[0] && mass <= band[1])) return [];
  return [
    { field: `${at}.mass_kg`, got: mass, need: `a mass within mass_band, ${band[0]} to ${band[1]} kg` },
  ];
}

function pinFaults(pins: unknown, at: string, kit: ReadonlyMap<string, string>): readonly Refusal[] {
  if (Array.isArray(pins)) {
    const ids: readonly unknown[] = pins;
    return ids.flatMap((pin, index) =>
      typeof pin !== "string" || kit.has(pin)
        ? []
        : [{ field: `${at}[${index}]`, got: pin, need: "the id of an item in kit" }],
    );
  }
  return ["hammock", "suspension", "tarp", "under", "over"].flatMap((kind) => {
    const pin = textAt(pins, kind);
    if (pin === undefined || kit.get(pin) === kind) return [];
    return [{ field: `${at}.${kind}`, got: pin, need: `the id of a kit item of kind "${kind}"` }];
  });
}

function ruleChecks(rules: unknown): readonly Refusal[] {
  const order = [
    ["span_min_m", "span_ideal_m"],
    ["span_min_m", "span_max_m"],
    ["span_ideal_m", "span_max_m"],
    ["angle_min_deg", "angle_max_deg"],
  ] as const;
  return order.flatMap(([low, high]) => {
    const [least, most] = [ruleValue(rules, low), ruleValue(rules, high)];
    if (least === undefined || most === undefined || least <= most) return [];
    return [{ field: `rules.${low}`, got: least, need: `at most ${high}, which is ${most}` }];
  });
}

function ruleValue(rules: unknown, key: string): number | undefined {
  return numberAt(rules, key) ?? numberAt(field(rules, key), "value");
}

function idsOf(items: readonly unknown[]): ReadonlySet<string> {
  return new Set(items.flatMap((item) => textAt(item, "id") ?? []));
}

function kindsOf(document: unknown): ReadonlyMap<string, string> {
  return new Map(
    listAt(document, "kit").flatMap((item) => {
      const id = textAt(item, "id");
      return id === undefined ? [] : [[id, textAt(item, "kind") ?? ""] as const];
    }),
  );
}
