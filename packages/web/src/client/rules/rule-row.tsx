import { RULE_DEFAULTS, type PresetName } from "@nightspan/core";
import { useSignal } from "@preact/signals";
import {
  isStated,
  presetValue,
  rulePath,
  ruleSource,
  setRuleSource,
  setRuleValue,
  type RuleName,
} from "../state/house-rule.ts";
import { sayDay } from "../state/today.ts";
import { Button } from "../ui/button.tsx";
import { ChoiceField, DayField, FlagField, ListField, NumberField, TextField } from "../ui/field.tsx";
import { fill, WORDS } from "../words.ts";

interface RuleRowProps {
  readonly name: RuleName;
  readonly preset: PresetName;
}

/** One rule: its figure, why there is one, and who says so. */
export function RuleRow({ name, preset }: RuleRowProps) {
  const asked = useSignal(false);
  return (
    <div class="rule">
      <RuleValue name={name} preset={preset} />
      <p class="rule-source note soft">
        <span>{saySource(name, preset)}</span>
        {canBeSourced(name, preset) ? (
          <Button
            kind="plain"
            pressed={asked.value}
            label={fill(WORDS.rules.whoSays, { rule: WORDS.rules.names[name] })}
            onPress={() => (asked.value = !asked.value)}
          >
            {WORDS.rules.who}
          </Button>
        ) : null}
      </p>
      {asked.value ? <SourceFields name={name} preset={preset} /> : null}
    </div>
  );
}

function RuleValue({ name, preset }: RuleRowProps) {
  const label = WORDS.rules.names[name];
  const set = (value: unknown) => setRuleValue(name, value);
  const path = rulePath(name);
  if (name === "no_spokes") {
    return <FlagField path={path} label={label} note={WORDS.rules.spokesNote} silent={false} set={set} />;
  }
  if (name === "survey_room") {
    return (
      <ChoiceField
        path={path}
        label={label}
        note={WORDS.rules.surveyRoomNote}
        choices={ROOM_CHOICES}
        set={(text) => set(text === undefined ? undefined : text === "true")}
      />
    );
  }
  if (name === "species_not") {
    return <ListField path={path} label={label} note={WORDS.rules.speciesNote} set={set} />;
  }
  const { unit, why } = RULE_DEFAULTS[name];
  const value = presetValue(name, preset);
  return (
    <NumberField
      path={path}
      label={label}
      note={why}
      unit={UNITS[unit] ?? unit}
      hint={value === null ? WORDS.rules.noCap : String(value)}
      set={set}
    />
  );
}

const ROOM_CHOICES = [
  ["", WORDS.rules.roomSilent],
  ["true", WORDS.rules.roomKept],
  ["false", WORDS.rules.roomNone],
] as const;

const UNITS: Readonly<Record<string, string>> = { "1": "", deg: "°", people: "" };

/** A rule that nobody caps has no figure yet that somebody could have said. */
function canBeSourced(name: RuleName, preset: PresetName): boolean {
  return isStated(name) || presetValue(name, preset) !== null;
}

function saySource(name: RuleName, preset: PresetName): string {
  const said = ruleSource(name);
  if (said === undefined) {
    if (isStated(name)) return WORDS.rules.fromFile;
    if (presetValue(name, preset) === null) return WORDS.rules.nobody;
    return fill(WORDS.rules.fromPreset, { preset: WORDS.rules[preset] });
  }
  const { source, readOn } = said;
  return readOn === undefined ? source : fill(WORDS.rules.readOn, { source, day: sayDay(readOn) });
}

function SourceFields({ name, preset }: RuleRowProps) {
  const said = ruleSource(name);
  return (
    <div class="rule-who">
      <TextField
        path={["rules", name, "source"]}
        label={WORDS.rules.source}
        hint={WORDS.rules.sourceHint}
        set={(source) =>
          setRuleSource(name, { ...said, source: typeof source === "string" ? source : undefined }, preset)
        }
      />
      {said === undefined ? null : (
        <DayField
          path={["rules", name, "read_on"]}
          label={WORDS.rules.day}
          set={(readOn) =>
            setRuleSource(
              name,
              typeof readOn === "string" ? { ...said, readOn } : { source: said.source },
              preset,
            )
          }
        />
      )}
    </div>
  );
}
