import { checks } from "@nightspan/checks";
import { contrastRatio } from "./contrast.ts";
import rows from "./contrast.checks.json" with { type: "json" };

checks(rows, ({ one, other }) => ({ ratio: contrastRatio(one, other) }));
