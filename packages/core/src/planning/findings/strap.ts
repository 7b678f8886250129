import { kept, type Comparison, type Finding } from "../../outcome/finding.ts";
import { BARK_FRICTION_MIDDLE } from "../../statics/capstan.ts";
import { strapGrip } from "../symptoms/strap-grip.ts";
import { berthSubject, ENDS, type BerthCase, type End } from "./berth-case.ts";

/** Where each strap sits and how it hangs: its height against reach and cap, its angle, its length, its webbing. */
export function strapFindings(berth: BerthCase): Finding[] {
  return ENDS.flatMap((end) => [
    ...heights(berth, end),
    ...angles(berth, end),
    ...lengths(berth, end),
    ...webbing(berth, end),
    ...slip(berth, end),
  ]);
}

function heights(berth: BerthCase, end: End): Finding[] {
  const { limits, kit, hang, setBy } = berth;
  const demand = hang[end].strapHeightM;
  const reach = kept(
    {
      ...about(berth, end),
      rule: "strap.reach",
      source: "camp-file",
      sense: "at-most",
      demand,
      limit: kit.sleeper.reachM,
      unit: "m",
      about: [setBy],
    },
    "look-again",
  );
  if (limits.strapHeightMaxM === undefined) return [reach];
  const limit = limits.strapHeightMaxM;
  const cap = {
    ...about(berth, end),
    rule: "strap.height-cap",
    sense: "at-most",
    demand,
    limit,
    unit: "m",
  } as const;
  return [reach, kept(cap, "do-not-hang")];
}

function angles(berth: BerthCase, end: End): Finding[] {
  const { angleMin, angleMax } = berth.limits;
  const angle = berth.hang[end].angle;
  const of = { ...about(berth, end), unit: "rad" } as const;
  return [
    kept(
      {
        ...of,
        rule: "strap.angle-flattest",
        sense: "at-least",
        demand: settled(angle, angleMin),
        limit: angleMin,
      },
      "do-not-hang",
    ),
    kept(
      {
        ...of,
        rule: "strap.angle-steepest",
        sense: "at-most",
        demand: settled(angle, angleMax),
        limit: angleMax,
      },
      "do-not-hang",
    ),
  ];
}

function lengths(berth: BerthCase, end: End): Finding[] {
  const { minM, maxM } = berth.kit.suspension;
  const demand = berth.hang[end].strapLengthM;
  const of = { ...about(berth, end), source: "camp-file", demand, unit: "m" } as const;
  const shortest = kept({ ...of, rule: "sling.shortest", sense: "at-least", limit: minM }, "do-not-hang");
  if (maxM === undefined) return [shortest];
  return [shortest, kept({ ...of, rule: "sling.longest", sense: "at-most", limit: maxM }, "do-not-hang")];
}

function webbing(berth: BerthCase, end: End): Finding[] {
  const { strapLengthM, id } = berth.kit.suspension;
  if (strapLengthM === undefined) return [];
  const of = { ...about(berth, end), source: "camp-file", unit: "m", about: id === "" ? [] : [id] } as const;
  const limit = berth.hang[end].webbingM;
  return [
    kept({ ...of, rule: "webbing.length", sense: "at-least", demand: strapLengthM, limit }, "do-not-hang"),
  ];
}

/**
 * Whether the strap stays up on ordinary bark by its own turns: it slips where it pulls down harder over its inward
 * pull, tan θ, than friction round the trunk can hold. Nothing of a strap whose two eyes meet: what keeps it up is how
 * tight it was drawn, and nobody knows that.
 */
function slip(berth: BerthCase, end: End): Finding[] {
  const { suspension } = berth.request;
  if (suspension.type === "whoopie-sling" && suspension.throughOwnEye !== true) return [];
  return [
    kept(
      {
        ...about(berth, end),
        rule: "strap.slip",
        source: "capstan",
        sense: "at-most",
        demand: Math.tan(berth.hang[end].angle),
        limit: strapGrip(suspension, 0, BARK_FRICTION_MIDDLE),
        unit: "1",
        depth: "why",
      },
      "look-again",
    ),
  ];
}

function about({ id }: BerthCase, end: End): Pick<Comparison, "subject" | "source"> {
  return { subject: berthSubject(id, `${end}-strap`), source: "house-rules" };
}

/** An angle set to its limit comes back through a tangent: within 1e-6 rad it is the limit. */
function settled(angle: number, limit: number): number {
  return Math.abs(angle - limit) <= 1e-6 ? limit : angle;
}
