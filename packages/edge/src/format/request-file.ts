import { degrees, inDegrees, type HangInput } from "@nightspan/core";
import { hammockInSi, sleeperInSi, suspensionInSi, targetsInSi, treeInSi } from "./hang-parts.ts";
import { convert, present } from "./optional.ts";
import type { RequestFile } from "./plan-schema.ts";
import { tidy } from "./tidy.ts";

/** What a hang was asked for, as the plan file writes it; the span stands in the berth itself. */
export function requestFile(request: HangInput): RequestFile {
  const { head, foot, hammock, suspension, sleeper, targets } = request;
  return present({
    span_error_m: convert(request.spanErrorM, tidy),
    head: treeFile(head),
    foot: treeFile(foot),
    hammock: present({
      length_m: tidy(hammock.lengthM),
      ridgeline_m: convert(hammock.ridgelineM, tidy),
      mass_kg: tidy(hammock.massKg),
      ea_n: convert(hammock.eaN, tidy),
    }),
    suspension: present({
      type: suspension.type,
      min_m: tidy(suspension.minM),
      max_m: convert(suspension.maxM, tidy),
      ea_n: convert(suspension.eaN, tidy),
      wraps: convert(suspension.wraps, tidy),
      through_own_eye: suspension.throughOwnEye,
      connector_m: convert(suspension.connectorM, tidy),
      owned_m: convert(suspension.ownedM, tidy),
    }),
    sleeper: { mass_kg: tidy(sleeper.massKg), stature_m: tidy(sleeper.statureM) },
    targets: present({
      angle_deg: tidy(inDegrees(targets.angle)),
      seat_height_m: convert(targets.seatHeightM, tidy),
      foot_raise_m: tidy(targets.footRaiseM),
    }),
    limits: limitsFile(request.limits),
  });
}

/** The same read back, with the berth's span. */
export function readRequest(file: RequestFile, spanM: number): HangInput {
  const { head, foot, hammock, suspension, sleeper, targets, limits } = file;
  return present({
    spanM,
    spanErrorM: file.span_error_m,
    head: treeInSi(head),
    foot: treeInSi(foot),
    hammock: hammockInSi(hammock),
    suspension: suspensionInSi(suspension),
    sleeper: sleeperInSi(sleeper),
    targets: targetsInSi(targets),
    limits: present({
      angleMin: degrees(limits.angle_min_deg),
      angleMax: degrees(limits.angle_max_deg),
      reachM: limits.reach_m,
      strapHeightMaxM: limits.strap_height_max_m,
      lowPointMaxM: limits.low_point_max_m,
      lowPointMinM: limits.low_point_min_m,
      seatHeightMinM: limits.seat_height_min_m,
      seatHeightMaxM: limits.seat_height_max_m,
      footRaiseMinM: limits.foot_raise_min_m,
      footRaiseMaxM: limits.foot_raise_max_m,
    }),
  });
}

function treeFile({ dbhM, elevationM }: HangInput["head"]): RequestFile["head"] {
  return { dbh_cm: tidy(dbhM * 100), elevation_m: tidy(elevationM) };
}

function limitsFile(limits: HangInput["limits"]): RequestFile["limits"] {
  return present({
    angle_min_deg: tidy(inDegrees(limits.angleMin)),
    angle_max_deg: tidy(inDegrees(limits.angleMax)),
    reach_m: convert(limits.reachM, tidy),
    strap_height_max_m: convert(limits.strapHeightMaxM, tidy),
    low_point_max_m: convert(limits.lowPointMaxM, tidy),
    low_point_min_m: tidy(limits.lowPointMinM),
    seat_height_min_m: tidy(limits.seatHeightMinM),
    seat_height_max_m: tidy(limits.seatHeightMaxM),
    foot_raise_min_m: tidy(limits.footRaiseMinM),
    foot_raise_max_m: tidy(limits.footRaiseMaxM),
  });
}
