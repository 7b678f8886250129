import { byRule, kept, type Finding } from "../../outcome/finding.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
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
 * A span counted in steps at the very pair may be off by its own error as long as the hang allows that.
 */
function unsure({ id, place, camp, hang }: BerthCase): Finding[] {
  if (!place.stepItOut && !place.stepped) return [];
  const positionErrorM = camp.ground?.positionErrorM ?? 0;
  const offM = place.stepItOut
    ? Math.SQRT2 * positionErrorM
    : DEFAULTS["ground.pairs[].steps"].value * place.spanM;
  const ok = hang.ok.spanM;
  const roomM = ok === undefined ? 0 : Math.max(0, Math.min(ok.high - place.spanM, place.spanM - ok.low));
  const finding = {
    rule: "span.stepped",
    source: "common-practice",
    subject: berthSubject(id),
    sense: "at-most",
    demand: offM,
    limit: roomM,
    unit: "m",
  } as const;
  return [place.stepItOut ? byRule(finding, "look-again") : kept(finding, "look-again")];
}
