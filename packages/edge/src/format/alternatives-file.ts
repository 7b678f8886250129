import {
  inDegrees,
  type AlternativeHang,
  type HangAlternative,
  type HangAlternatives,
} from "@nightspan/core";
import type * as z from "zod/mini";
import type { alternativesSchema } from "./alternatives-schema.ts";
import { findingFile } from "./finding-file.ts";
import { convert, present, twoOf } from "./optional.ts";
import { tidy } from "./tidy.ts";

export type AlternativesFile = z.infer<typeof alternativesSchema>;

/** What else could be done at two trees, as the plan file writes it. */
export function alternativesFile({
  sleeper,
  trees: [a, b],
  spanM,
  binds,
  tries,
}: HangAlternatives): AlternativesFile {
  return { sleeper, trees: twoOf(a, b), span_m: tidy(spanM), binds, tries: tries.map(tryFile) };
}

function tryFile({
  kind,
  item,
  trees,
  spanM,
  hung,
  because,
}: HangAlternative): AlternativesFile["tries"][number] {
  return present({
    kind,
    item,
    trees: trees === undefined ? undefined : twoOf(trees[0], trees[1]),
    span_m: convert(spanM, tidy),
    hung: hung === undefined ? undefined : hungFile(hung),
    because: because.map(findingFile),
  });
}

function hungFile({ angle, headStrapLengthM, footStrapLengthM, seatHeightM, webbingM }: AlternativeHang) {
  return {
    angle_deg: tidy(inDegrees(angle)),
    head_strap_length_m: tidy(headStrapLengthM),
    foot_strap_length_m: tidy(footStrapLengthM),
    seat_height_m: tidy(seatHeightM),
    webbing_m: tidy(webbingM),
  };
}
