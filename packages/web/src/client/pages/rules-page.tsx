import type { HouseRule, HouseRules } from "@nightspan/core";
import { opened } from "../state/camp-store.ts";
import { readAt, type DocumentPath } from "../state/document-path.ts";
import { ChoiceField, FieldList, NumberField } from "../ui/field.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** The limits of the land manager and the organisation; what is left empty comes from the preset. */
export function RulesPage() {
  const rules = opened.value?.camp.rules;
  if (rules === undefined) return null;
  return (
    <CampFrame page="rules">
      <div class="list-page">
        <h2>{WORDS.rules.title}</h2>
        <p>{WORDS.rules.lead}</p>
        <Working />
        <FieldList>
          <ChoiceField
            path={["rules", "preset"]}
            label={WORDS.rules.preset}
            choices={(["cautious", "usual", "backcountry"] as const).map((name) => [name, WORDS.rules[name]])}
            silentValue="usual"
          />
        </FieldList>
        <FieldList>
          {RULES.map(({ rule, ...field }) => (
            <Rule key={field.field} {...field} rule={rules[rule]} />
          ))}
        </FieldList>
        <h3>{WORDS.rules.setbacks}</h3>
        <FieldList>
          {SETBACKS.map((kind) => (
            <Rule
              key={kind}
              field={`${kind}_m`}
              within="setbacks"
              label={WORDS.rules[kind]}
              unit="m"
              rule={rules.setbacksM[kind]}
            />
          ))}
        </FieldList>
      </div>
    </CampFrame>
  );
}

const DEG = 180 / Math.PI;

/** The rules by the camp file's names, and where the engine keeps each. */
const RULES: readonly RuleLine[] = [
  { field: "span_min_m", label: WORDS.rules.spanMin, unit: "m", rule: "spanMinM" },
  { field: "span_max_m", label: WORDS.rules.spanMax, unit: "m", rule: "spanMaxM" },
  { field: "span_ideal_m", label: WORDS.rules.spanIdeal, unit: "m", rule: "spanIdealM" },
  { field: "trunk_min_cm", label: WORDS.rules.trunkMin, unit: "cm", rule: "trunkMinM", scale: 100 },
  {
    field: "strap_width_min_mm",
    label: WORDS.rules.strapWidth,
    unit: "mm",
    rule: "strapWidthMinM",
    scale: 1000,
  },
  { field: "hammocks_per_tree", label: WORDS.rules.perTree, rule: "hammocksPerTree" },
  { field: "strap_height_max_m", label: WORDS.rules.strapHeight, unit: "m", rule: "strapHeightMaxM" },
  { field: "low_point_max_m", label: WORDS.rules.lowPoint, unit: "m", rule: "lowPointMaxM" },
  { field: "design_factor", label: WORDS.rules.designFactor, rule: "designFactor" },
  { field: "angle_min_deg", label: WORDS.rules.angleMin, unit: "°", rule: "angleMinRad", scale: DEG },
  { field: "angle_max_deg", label: WORDS.rules.angleMax, unit: "°", rule: "angleMaxRad", scale: DEG },
  { field: "dead_tree_heights", label: WORDS.rules.deadTree, rule: "deadTreeHeights" },
  { field: "doubtful_tree_heights", label: WORDS.rules.doubtfulTree, rule: "doubtfulTreeHeights" },
  { field: "tarp_half_width_m", label: WORDS.rules.tarpHalf, unit: "m", rule: "footprintHalfWidthM" },
];

interface RuleLine extends Omit<RuleProps, "rule" | "within"> {
  readonly rule: RuleName;
}

/** Those of the house rules that are one figure. */
type RuleName = {
  [K in keyof HouseRules]-?: NonNullable<HouseRules[K]> extends HouseRule ? K : never;
}[keyof HouseRules];

const SETBACKS = ["fire", "path", "water", "building", "rock", "other"] as const;
interface RuleProps {
  readonly field: string;
  readonly within?: "setbacks";
  readonly label: string;
  readonly unit?: string;
  readonly rule: HouseRule | undefined;
  /** Units of the field in one unit of the engine. */
  readonly scale?: number;
}

/** One rule: as the camp file says it, or the preset's figure in the empty field. */
function Rule({ field, within, label, unit, rule, scale = 1 }: RuleProps) {
  const base: DocumentPath = within === undefined ? ["rules", field] : ["rules", within, field];
  const written = readAt(opened.value?.document, base);
  const path = typeof written === "object" && written !== null ? [...base, "value"] : base;
  const hint = rule === undefined ? WORDS.rules.noCap : String(Number((rule.value * scale).toFixed(2)));
  return <NumberField path={path} label={label} hint={hint} {...(unit === undefined ? {} : { unit })} />;
}
