import { degrees, type HangAlternatives } from "@nightspan/core";
import { describe, expect, it } from "vitest";
import { alternativesFile } from "./alternatives-file.ts";
import { alternativesSchema } from "./alternatives-schema.ts";

const TOLD: HangAlternatives = {
  sleeper: "s1",
  trees: ["K1", "K2"],
  spanM: 3.6,
  binds: "sling-shortest",
  tries: [
    {
      kind: "strap-alone",
      hung: {
        angle: degrees(29),
        headStrapLengthM: 0.6,
        footStrapLengthM: 0.62,
        seatHeightM: 0.46,
        webbingM: 1.9,
      },
      because: [],
    },
    { kind: "other-pair", trees: ["K3", "K4"], spanM: 4.2, because: [] },
    { kind: "other-hammock", item: "red", because: [] },
  ],
};

describe("alternatives in the plan file", () => {
  it("are written in metres and degrees, and read back by the schema as they are", () => {
    const file = alternativesFile(TOLD);
    expect(file.tries[0]?.hung?.angle_deg).toBeCloseTo(29, 9);
    expect(file.tries[1]).toEqual({ kind: "other-pair", trees: ["K3", "K4"], span_m: 4.2, because: [] });
    expect(file.tries[2]).toEqual({ kind: "other-hammock", item: "red", because: [] });
    expect(alternativesSchema.parse(JSON.parse(JSON.stringify(file)))).toEqual(file);
  });
});
