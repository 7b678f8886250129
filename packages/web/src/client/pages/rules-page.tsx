import { opened } from "../state/camp-store.ts";
import type { RuleName } from "../state/house-rule.ts";
import { CostWeightList } from "../rules/cost-weights.tsx";
import { RuleRow } from "../rules/rule-row.tsx";
import { RulesPicture } from "../rules/rules-picture.tsx";
import { SetbackPicture } from "../rules/setback-picture.tsx";
import { ChoiceField, FieldList } from "../ui/field.tsx";
import { Working } from "../ui/working.tsx";
import { WORDS } from "../words.ts";
import { CampFrame } from "./camp-frame.tsx";

/** The limits of the land manager and the organisation; what is left empty comes from the preset. */
export function RulesPage() {
  const rules = opened.value?.camp.rules;
  if (rules === undefined) return null;
  return (
    <CampFrame page="rules">
      <div class="two-sides">
        <div class="side-picture">
          <h2>{WORDS.rules.title}</h2>
          <p>{WORDS.rules.lead}</p>
          <RulesPicture rules={rules} />
          <SetbackPicture setbacksM={rules.setbacksM} />
        </div>
        <div class="side-list">
          <Working />
          <FieldList>
            <ChoiceField
              path={["rules", "preset"]}
              label={WORDS.rules.preset}
              choices={(["cautious", "usual", "backcountry"] as const).map((name) => [
                name,
                WORDS.rules[name],
              ])}
              silentValue="usual"
            />
          </FieldList>
          {PARTS.map(({ title, names }) => (
            <section key={title} class="rules-part">
              <h3>{title}</h3>
              <FieldList>
                {names.map((name) => (
                  <RuleRow key={name} name={name} preset={rules.preset} />
                ))}
              </FieldList>
            </section>
          ))}
          <CostWeightList />
        </div>
      </div>
    </CampFrame>
  );
}

interface RulesPart {
  readonly title: string;
  readonly names: readonly RuleName[];
}

const PARTS: readonly RulesPart[] = [
  {
    title: WORDS.rules.partSpan,
    names: ["span_min_m", "span_ideal_m", "span_max_m", "footprint_half_width_m", "survey_room"],
  },
  {
    title: WORDS.rules.partTrunk,
    names: [
      "trunk_min_cm",
      "strap_width_min_mm",
      "hammocks_per_tree",
      "no_spokes",
      "species_not",
      "tree_pull_max_kn",
    ],
  },
  {
    title: WORDS.rules.partHeight,
    names: ["strap_height_max_m", "low_point_max_m", "angle_min_deg", "angle_max_deg", "design_factor"],
  },
  {
    title: WORDS.rules.setbacks,
    names: [
      "dead_tree_heights",
      "doubtful_tree_heights",
      "setback_fire_m",
      "setback_path_m",
      "setback_water_m",
      "setback_building_m",
      "setback_rock_m",
      "setback_other_m",
    ],
  },
  { title: WORDS.rules.partPeople, names: ["spare_per", "adult_youth_m"] },
];
