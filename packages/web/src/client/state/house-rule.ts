import { RULE_DEFAULTS, type PresetName, type Refusal, type RuleField } from "@nightspan/core";
import { editCamp, opened } from "./camp-store.ts";
import { readAt, writeAt, type DocumentPath } from "./document-path.ts";

/** A house rule by its name in the camp file. */
export type RuleName = RuleField | "no_spokes" | "survey_room" | "species_not";

/** Who says a rule, and the civil day it was read. */
export interface RuleSource {
  readonly source: string;
  readonly readOn?: string;
}

/** Where the rule's own value stands in the file: alone, or beside who says so. */
export function rulePath(name: RuleName): DocumentPath {
  return hasSource(written(name)) ? ["rules", name, "value"] : ["rules", name];
}

/** Who says so, where the camp file names them. */
export function ruleSource(name: RuleName): RuleSource | undefined {
  const rule = written(name);
  if (!hasSource(rule)) return undefined;
  const { source, read_on: readOn } = rule;
  return typeof readOn === "string" ? { source, readOn } : { source };
}

/** Whether the camp file states the rule itself. */
export function isStated(name: RuleName): boolean {
  return written(name) !== undefined;
}

/** The preset's figure in the file's unit; null where that preset caps nothing. */
export function presetValue(name: RuleName, preset: PresetName): number | null {
  return name === "no_spokes" || name === "survey_room" || name === "species_not"
    ? null
    : RULE_DEFAULTS[name][preset];
}

/** Sets the value and keeps who says so; an empty value leaves the rule to the preset. */
export function setRuleValue(name: RuleName, value: unknown): readonly Refusal[] {
  const rule = written(name);
  return put(name, value === undefined || !hasSource(rule) ? value : { ...rule, value });
}

/** Names who says so; the preset's figure becomes theirs where the file was silent. */
export function setRuleSource(
  name: RuleName,
  { source, readOn }: Omit<RuleSource, "source"> & { readonly source: string | undefined },
  preset: PresetName,
): readonly Refusal[] {
  const value = readAt(opened.peek()?.document, rulePath(name)) ?? presetValue(name, preset) ?? undefined;
  if (source === undefined || value === undefined) return put(name, value);
  return put(name, { value, source, ...(readOn === undefined ? {} : { read_on: readOn }) });
}

function put(name: RuleName, rule: unknown): readonly Refusal[] {
  return editCamp(`rules.${name}`, (document) => writeAt(document, ["rules", name], rule));
}

function written(name: RuleName): unknown {
  return readAt(opened.value?.document, ["rules", name]);
}

function hasSource(rule: unknown): rule is { readonly source: string; readonly read_on?: unknown } {
  return typeof rule === "object" && rule !== null && "source" in rule && typeof rule.source === "string";
}
