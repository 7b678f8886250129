import { openCamp } from "@nightspan/edge";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { drawableNames } from "./drawable-names.ts";
import { canDraw, loadFaces, type Faces } from "./faces.ts";

let faces: Faces;

beforeAll(async () => {
  faces = await loadFaces();
});

describe("pieces of a line", () => {
  it("stand from left to right as they are read", () => {
    const texts = (line: string): string[] => faces.pieces(line).map(({ text }) => text);
    expect(texts("Look at K12, then sit.")).toEqual(["Look at K12, then sit."]);
    expect(texts("wake \u2068أمينة خليل\u2069.")).toEqual(["wake ", "أمينة خليل", "."]);
    expect(texts("نور 2")).toEqual(["2", "نور "]);
    expect(texts("王小梅 to B4")).toEqual(["王小梅", " to B4"]);
  });

  it("lose no letter that can be drawn", () => {
    const words = fc.array(fc.constantFrom("Łucja", "नीरा", "王小梅", "Ольга", "K12", "½", "–"), {
      maxLength: 6,
    });
    fc.assert(
      fc.property(words, (said) => {
        const line = said.join(" ");
        const set = faces.pieces(line).map(({ text }) => text);
        expect(set.join("")).toBe(line);
      }),
      { seed: 1, numRuns: 100 },
    );
  });

  it("set a word whole in one face", () => {
    for (const word of ["Łucja", "Adéyẹmí", "Дмитро", "王小梅", "आरव", "أمينة", "박지우", "สมชาย", "ป่าไม้"]) {
      expect(faces.pieces(word)).toHaveLength(1);
    }
  });

  it("are as wide together as each alone", () => {
    const [face] = faces.pieces("A");
    expect(face?.face.width("Look up, Te", 400)).toBeCloseTo(
      ["Look", " ", "up,", " ", "Te"].reduce((sum, part) => sum + (face?.face.width(part, 400) ?? 0), 0),
      9,
    );
    expect(face?.face.width("Wide", 700)).toBeGreaterThan(face?.face.width("Wide", 400) ?? Infinity);
  });
});

describe("names that no face can draw", () => {
  const camp = (name: string, id: string) => {
    const sleepers = [{ id, name, stature_m: 1.7 }];
    const opened = openCamp({ format: "nightspan-camp/1", name: "Two trees", sleepers });
    if (!opened.ok) throw new Error(JSON.stringify(opened.refusals));
    return opened.value.camp;
  };

  it("are written as the id, also within a sentence", () => {
    const { drawable, remarks } = drawableNames(camp("តារា", "dara"), faces);
    expect(drawable("wake តារា, berth 4.")).toBe("wake dara, berth 4.");
    expect(remarks).toEqual(["PDF: no letters for Khmer, so តារា is written as dara"]);
  });

  it("are counted where the id cannot be drawn either", () => {
    const { drawable } = drawableNames(camp("តារា", "រា"), faces);
    expect(drawable("តារា")).toBe("sleeper 1");
  });

  it("name their script where nothing else is known of them", () => {
    const { drawable } = drawableNames(camp("Ada", "ada"), faces);
    expect(drawable("ព្រៃ, north end")).toBe("[Khmer], north end");
    expect(canDraw(faces, drawable("ព្រៃ 숲 𞤀"))).toBe(true);
  });

  it("leave all others as they are", () => {
    const { drawable, remarks } = drawableNames(camp("Нина 王 آ 박지우 สมชาย", "nina"), faces);
    expect(drawable("Нина 王 آ 박지우 สมชาย")).toBe("Нина 王 آ 박지우 สมชาย");
    expect(remarks).toEqual([]);
  });
});
