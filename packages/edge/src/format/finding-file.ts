import type { Finding } from "@nightspan/core";
import { present } from "./optional.ts";
import type { FindingFile } from "./plan-schema.ts";
import { tidy } from "./tidy.ts";

/** A finding in the form of the file. */
export function findingFile(finding: Finding): FindingFile {
  const { demand, limit, margin, about, ...rest } = finding;
  return present({
    ...rest,
    demand: tidy(demand),
    limit: tidy(limit),
    margin: margin === null ? undefined : tidy(margin),
    about: about === undefined ? undefined : [...about],
  });
}
