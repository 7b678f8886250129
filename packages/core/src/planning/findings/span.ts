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
    ...window(berth),
  ];
}

/**
 * A span outside the window of spans that serve, by what ends the window there: room for the tarp, mostly. A trunk that
 * bends too far has a finding of its own.
 */
function window({ id, place, spanWindow }: BerthCase): Finding[] {
  if (spanWindow === undefined) return [];
  const { low, high, bindsLow, bindsHigh } = spanWindow;
  const of = { rule: "span.window", source: "hang-chain", subject: berthSubject(id), unit: "m" } as const;
  const span = { ...of, demand: settled(place.spanM, low, high) } as const;
  return [
    kept({ ...span, sense: "at-least", limit: low, about: [bindsLow] }, "look-again"),
    kept({ ...span, sense: "at-most", limit: high, about: [bindsHigh] }, "look-again"),
  ].filter(({ verdict, about }) => verdict !== "clear" && !about?.includes("trunk-bend"));
}

/** The window was closed in on from inside: a span this near to its end is taken as the end [m]. */
const WINDOW_READ_M = 1e-3;

function settled(spanM: number, low: number, high: number): number {
  const inside = Math.min(Math.max(spanM, low), high);
  return Math.abs(spanM - inside) <= WINDOW_READ_M ? inside : spanM;
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
