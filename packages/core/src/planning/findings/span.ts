import { byRule, kept, type Finding } from "../../outcome/finding.ts";
import { berthSubject, type BerthCase } from "./berth-case.ts";

/** The span against the house rules, and how sure it is against how far it may be off. */
export function spanFindings(berth: BerthCase): Finding[] {
  const { id, place, camp } = berth;
  const of = { subject: berthSubject(id), source: "house-rules", demand: place.spanM, unit: "m" } as const;
  const { spanMinM, spanMaxM } = camp.rules;
  return [
    kept({ ...of, rule: "span.least", sense: "at-least", limit: spanMinM.value }, "do-not-hang"),
    kept({ ...of, rule: "span.most", sense: "at-most", limit: spanMaxM.value }, "do-not-hang"),
    ...unsure(berth),
  ];
}

/**
 * A span between positions that were stepped or came from GPS must be stepped out before use, whatever the figures.
 * A span counted in steps at the very pair may be off by its usual error and still lie in the house's range.
 */
function unsure({ id, place, camp }: BerthCase): Finding[] {
  const { spanM, spanErrorM, stepItOut, stepped } = place;
  if (!stepItOut && !stepped) return [];
  const { spanMinM, spanMaxM } = camp.rules;
  const finding = {
    rule: "span.stepped",
    source: "common-practice",
    subject: berthSubject(id),
    sense: "at-most",
    demand: stepItOut ? Math.SQRT2 * (camp.ground?.positionErrorM ?? 0) : spanErrorM,
    limit: Math.max(0, Math.min(spanMaxM.value - spanM, spanM - spanMinM.value)),
    unit: "m",
  } as const;
  return [stepItOut ? byRule(finding, "look-again") : kept(finding, "look-again")];
}
