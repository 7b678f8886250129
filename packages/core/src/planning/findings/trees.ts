import { byRule, kept, type Finding } from "../../outcome/finding.ts";
import { DEFAULTS } from "../../plan/defaults.ts";
import { degrees } from "../../quantity/angle.ts";
import { berthSubject, type BerthCase, type BerthEnd } from "./berth-case.ts";

/**
 * The two trees of a berth: stout enough by the house rule, and looked at that day, trunk, roots and all that is
 * above. A tree nobody looked at keeps its berth at look-again, whatever else is known of it.
 */
export function treeFindings(berth: BerthCase): Finding[] {
  return [berth.head, berth.foot].flatMap((end) => [trunk(berth, end), looked(end), ...lean(end)]);
}

function trunk({ id, place, camp }: BerthCase, end: BerthEnd): Finding {
  const subject = `tree/${end.id}`;
  if (end.tree === undefined && place.dbhAssumed) {
    return byRule(
      {
        rule: "tree.trunk-unknown",
        source: "camp-file",
        subject,
        sense: "at-least",
        demand: 0,
        limit: 1,
        unit: "1",
        about: [berthSubject(id)],
      },
      "look-again",
    );
  }
  return kept(
    {
      rule: "tree.trunk-least",
      source: "house-rules",
      subject,
      sense: "at-least",
      demand: end.dbhM,
      limit: camp.rules.trunkMinM.value,
      unit: "m",
    },
    "do-not-hang",
  );
}

function looked(end: BerthEnd): Finding {
  const isLooked = end.looked !== undefined;
  return byRule(
    {
      rule: "tree.looked-at",
      source: "camp-file",
      subject: `tree/${end.id}`,
      sense: "at-least",
      demand: isLooked ? 1 : 0,
      limit: 1,
      unit: "1",
      ...(end.looked === undefined ? {} : { about: [end.looked.by] }),
    },
    isLooked ? "clear" : "look-again",
  );
}

/** A tree that leans by more than a little asks for another look; nothing where nobody told a lean. */
function lean({ id, tree }: BerthEnd): Finding[] {
  if (tree?.leanRad === undefined) return [];
  return [
    kept(
      {
        rule: "tree.lean",
        source: "house-convention",
        subject: `tree/${id}`,
        sense: "at-most",
        demand: Math.abs(tree.leanRad),
        limit: degrees(DEFAULTS["hang.lean_deg"].value),
        unit: "rad",
      },
      "look-again",
    ),
  ];
}
