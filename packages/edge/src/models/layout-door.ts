import { layoutModel, succeed, type LayoutRules, type Tree } from "@nightspan/core";
import * as z from "zod/mini";
import { choice, list, number, whole } from "../format/fields.ts";
import { trunkFaults } from "../format/ground-checks.ts";
import { treeSchema } from "../format/ground-schema.ts";
import { convert, present } from "../format/optional.ts";
import { tidy } from "../format/tidy.ts";
import { twice } from "../format/twice.ts";
import { listAt } from "../format/raw.ts";
import { inFileForm, read, type Door } from "./door.ts";

const PEOPLE_NEED = "a whole number, 0 or more";

const stem = z.strictObject(treeSchema.shape);

const schema = z.strictObject({
  trees: list(stem, "trees", 0, 10_000),
  people: z.number({ error: PEOPLE_NEED }).check(z.int(PEOPLE_NEED), z.gte(0, PEOPLE_NEED)),
  rules: z.optional(
    z.strictObject({
      span_min_m: z.optional(number(0, 1_000, "m")),
      span_max_m: z.optional(number(0, 1_000, "m")),
      span_ideal_m: z.optional(number(0, 1_000, "m")),
      trunk_min_cm: z.optional(number(0, 1_000, "cm")),
      hammocks_per_tree: z.optional(whole(1, 1_000)),
      footprint: z.optional(choice("hexagon")),
      tarp_half_width_m: z.optional(number(0, 100, "m")),
      dead_tree_heights: z.optional(number(0, 100)),
    }),
  ),
});

type Asked = z.infer<typeof schema>;

/** Who hangs where for people and kit all alike, by the layout's own rules. */
export const layoutDoor: Door = {
  about: "the most berths in a wood, then the spans nearest the ideal",
  run(input, tools) {
    const asked = read(schema, input);
    const trees = listAt(input, "trees");
    const faults = [
      ...twice(trees, "trees", "id"),
      ...trees.flatMap((tree, index) => trunkFaults(tree, `trees[${index}]`)),
    ];
    if (!asked.ok) return { ok: false, refusals: [...asked.refusals, ...faults] };
    if (faults.length > 0) return { ok: false, refusals: faults };
    const found = layoutModel(
      {
        trees: asked.value.trees.map(stemInSi),
        people: asked.value.people,
        rules: rulesInSi(asked.value.rules),
      },
      tools,
    );
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, FIELDS) };
    const { costM, lowerBoundM, gap, berths, basis, ...rest } = found.value;
    return succeed({
      value: {
        ...rest,
        cost: tidy(costM),
        lower_bound: tidy(lowerBoundM),
        gap: tidy(gap),
        berths: berths.map(({ trees: ends, spanM }) => ({ trees: ends, span_m: tidy(spanM) })),
      },
      basis,
    });
  },
};

function stemInSi(tree: Asked["trees"][number]): Tree {
  return present({
    id: tree.id,
    xM: tree.x_m,
    yM: tree.y_m,
    dbhM: (tree.dbh_cm ?? (tree.girth_cm ?? 0) / Math.PI) / 100,
    condition: tree.condition ?? ("not-looked-at" as const),
    heightM: tree.height_m,
    tag: tree.tag ?? tree.id,
    use: tree.use ?? true,
  });
}

function rulesInSi(rules: Asked["rules"]): Partial<LayoutRules> {
  return present({
    spanMinM: rules?.span_min_m,
    spanMaxM: rules?.span_max_m,
    spanIdealM: rules?.span_ideal_m,
    trunkMinM: convert(rules?.trunk_min_cm, (cm) => cm / 100),
    hammocksPerTree: rules?.hammocks_per_tree,
    footprint: rules?.footprint,
    tarpHalfWidthM: rules?.tarp_half_width_m,
    deadTreeHeights: rules?.dead_tree_heights,
  });
}

const FIELDS = { "rules.trunkMinM": "rules.trunk_min_cm" };
