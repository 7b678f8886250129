import { describe, expect, it } from "vitest";
import { degrees } from "@nightspan/core";
import { readMeasured } from "./read-measured.ts";

function refusedFields(text: string): readonly string[] {
  const found = readMeasured(text);
  return found.ok ? [] : found.refusals.map(({ field }) => field);
}

describe("readMeasured", () => {
  it("takes any of it, in metres and degrees", () => {
    expect(readMeasured("{}")).toEqual({ ok: true, value: { measured: {}, followed: [] } });
    const some = readMeasured(
      JSON.stringify({
        span_m: 4.1,
        head: { strap_height_m: 1.6 },
        foot: { angle_deg: 31 },
        ridgeline: "bends",
        seat_height_m: 0.4,
        slides: "to-foot",
        knees: "strained",
        sits: "too-low",
        symptom: "calf-ridge",
      }),
    );
    expect(some).toEqual({
      ok: true,
      value: {
        measured: {
          spanM: 4.1,
          head: { strapHeightM: 1.6 },
          foot: { angle: degrees(31) },
          ridgeline: "bends",
          seatHeightM: 0.4,
          slides: "to-foot",
          knees: "strained",
          sits: "too-low",
        },
        followed: [],
        symptom: "calf-ridge",
      },
    });
  });

  it("takes the steps followed, with what was found before each", () => {
    const followed = [{ end: "head", action: "let-out", cm: 8, measured: { foot_raise_m: 0.1 } }];
    const found = readMeasured(JSON.stringify({ followed }));
    expect(found.ok ? found.value.followed : []).toEqual([
      { end: "head", action: "let-out", cm: 8, measured: { footRaiseM: 0.1 } },
    ]);
  });

  it("reads moves that will not go, and refuses others than moves", () => {
    const cannot = [{ end: "head", action: "take-in" }];
    const read = readMeasured(JSON.stringify({ seat_height_m: 0.4, cannot }));
    expect(read).toMatchObject({ ok: true, value: { cannot } });
    const bad = JSON.stringify({ cannot: [{ end: "head", action: "cut", cm: 3 }] });
    expect([...refusedFields(bad)].sort()).toEqual(["cannot[0].action", "cannot[0].cm"]);
  });

  it("refuses every fault at once, an unknown field too", () => {
    const bad = {
      span_m: "4.1",
      head: { strap_height_m: -1, angle: 30 },
      ridgeline: "loose",
      seat_height_ft: 1.5,
      symptom: "cold",
      followed: [{ end: "middle", action: "raise", cm: 0.5 }],
    };
    expect([...refusedFields(JSON.stringify(bad))].sort()).toEqual([
      "followed[0].cm",
      "followed[0].end",
      "head.angle",
      "head.strap_height_m",
      "ridgeline",
      "seat_height_ft",
      "span_m",
      "symptom",
    ]);
  });

  it("refuses what is no object, and no JSON", () => {
    expect(refusedFields("[]")).toEqual(["file"]);
    expect(refusedFields("{")).toEqual(["line 1, column 2"]);
    expect(refusedFields('{"span_m": null}')).toEqual(["span_m"]);
  });
});
