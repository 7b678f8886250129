import {
  DEFAULTS,
  degrees,
  hang,
  RULE_DEFAULTS,
  succeed,
  type Failure,
  type Hang,
  type HangInput,
  type Outcome,
  type Refusal,
} from "@nightspan/core";
import * as z from "zod/mini";
import { choice, number } from "../format/fields.ts";
import { hangFile } from "../format/hang-file.ts";
import { hammockInSi, sleeperInSi, suspensionInSi, targetsInSi, treeInSi } from "../format/hang-parts.ts";
import { present } from "../format/optional.ts";
import { inFileForm, read, type Door } from "./door.ts";

const end = () => {
  const schema = z.strictObject({
    dbh_cm: z._default(number(3, 500, "cm"), 30),
    elevation_m: z._default(number(-500, 9_000, "m"), 0),
  });
  return z._default(schema, { dbh_cm: 30, elevation_m: 0 });
};

const stiffness = () => z.optional(number(2_000, 1e9, "N"));

const schema = z.strictObject({
  span_m: number(0.5, 30, "m"),
  head: end(),
  foot: end(),
  hammock: z.strictObject({
    length_m: number(1.2, 6, "m"),
    ridgeline_m: z.optional(number(0.5, 6, "m")),
    mass_kg: z._default(number(0, 10, "kg"), 0.6),
  }),
  suspension: z.strictObject({
    type: choice("tied-webbing", "whoopie-sling"),
    min_m: z._default(number(0, 10, "m"), 0),
    max_m: z.optional(number(0.05, 30, "m")),
    ea_n: stiffness(),
  }),
  sleeper: z.strictObject({ mass_kg: number(5, 300, "kg"), stature_m: number(0.7, 2.5, "m") }),
  targets: z._default(
    z.strictObject({
      angle_deg: z._default(number(5, 75, "degrees"), 30),
      seat_height_m: z.optional(number(0.05, 3, "m")),
      foot_raise_m: z._default(number(-1, 1, "m"), 0.2),
    }),
    { angle_deg: 30, foot_raise_m: 0.2 },
  ),
});

/**
 * No house rules stand at this door: the angle asked for is the angle answered, or the request is refused. How far
 * off is still fine is told by the usual limits.
 */
export const hangDoor: Door = {
  about: "how to hang one hammock between two trees",
  run(input) {
    const asked = read(schema, input);
    if (!asked.ok) return asked;
    const found = asAsked(inSi(asked.value));
    if (!found.ok) return { ok: false, refusals: inFileForm(found.refusals, FIELDS) };
    return succeed({ value: hangFile(found.value), basis: found.value.basis });
  },
};

function inSi({
  span_m,
  head,
  foot,
  hammock,
  suspension,
  sleeper,
  targets,
}: z.infer<typeof schema>): HangInput {
  return {
    spanM: span_m,
    head: treeInSi(head),
    foot: treeInSi(foot),
    hammock: hammockInSi(hammock),
    suspension: suspensionInSi(suspension),
    sleeper: sleeperInSi(sleeper),
    targets: targetsInSi(targets),
    limits: OPEN,
    okLimits: usualLimits(sleeper.stature_m),
  };
}

/** As wide as the model goes. */
const OPEN: HangInput["limits"] = {
  angleMin: degrees(5),
  angleMax: degrees(75),
  lowPointMinM: 0,
  seatHeightMinM: 0.05,
  seatHeightMaxM: 3,
  footRaiseMinM: -1,
  footRaiseMaxM: 1,
};

/** What an `ok` range keeps: angles, seat and low point as in a plan, the foot raised by what teachers ask for. */
function usualLimits(statureM: number): HangInput["limits"] {
  return {
    angleMin: degrees(RULE_DEFAULTS.angle_min_deg.usual),
    angleMax: degrees(RULE_DEFAULTS.angle_max_deg.usual),
    lowPointMinM: DEFAULTS["hang.low_point_least_m"].value,
    seatHeightMinM: DEFAULTS["hang.seat_least"].value * statureM,
    seatHeightMaxM: DEFAULTS["hang.seat_most"].value * statureM,
    footRaiseMinM: FOOT_RAISE_LEAST_M,
    footRaiseMaxM: FOOT_RAISE_MOST_M,
  };
}

/** Foot end over head end that teachers ask for [m]. Source: common-practice. */
const FOOT_RAISE_LEAST_M = 0.15;
const FOOT_RAISE_MOST_M = 0.25;

/**
 * The hang at exactly the angle asked for. The model would move the angle to serve a limit; here that is told
 * as a refusal by the limit: solved without the suspension's lengths, then held against them.
 */
function asAsked(input: HangInput): Outcome<Hang> {
  const { type, eaN, minM, maxM } = input.suspension;
  const asGiven = hang(input);
  if (!asGiven.ok && asGiven.refusals.some(({ binds }) => binds === undefined)) return asGiven;
  const free = hang({ ...input, suspension: present({ type, eaN, minM: 0 }) });
  if (!free.ok) return free;
  if (!isAtAngle(free.value, input)) return tooClose(input.spanM);
  const ends = (["head", "foot"] as const).map((side) => ({ side, lengthM: free.value[side].strapLengthM }));
  const refusals = ends.flatMap(({ side, lengthM }): readonly Refusal[] => {
    const field = `${side}.strapLengthM`;
    const got = Math.round(lengthM * 1000) / 1000;
    if (lengthM < minM - SLACK_M)
      return [{ field, got, need: `at least ${minM} m`, binds: "sling-shortest" }];
    if (maxM === undefined || lengthM <= maxM + SLACK_M) return [];
    return [{ field, got, need: `at most ${maxM} m`, binds: "sling-longest" }];
  });
  return refusals.length > 0 ? { ok: false, refusals } : asGiven;
}

/** Within this a strap length meets its bound: the model's own search rests this far inside [m]. */
const SLACK_M = 1e-9;

function isAtAngle({ head, foot }: Hang, { targets }: HangInput): boolean {
  return Math.abs((head.angle + foot.angle) / 2 - targets.angle) < 1e-6;
}

function tooClose(spanM: number): Failure {
  const need = "trees farther apart, a shorter hammock or a steeper angle: no room is left for straps";
  return { ok: false, refusals: [{ field: "spanM", got: spanM, need, binds: "trees-too-close" }] };
}

const FIELDS = {
  "head.dbhM": "head.dbh_cm",
  "foot.dbhM": "foot.dbh_cm",
  "head.angle": "head.angle_deg",
  "foot.angle": "foot.angle_deg",
  "targets.angle": "targets.angle_deg",
};
