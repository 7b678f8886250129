import { describe, expect, it } from "vitest";
import { name, quantity, word } from "../scene/names.ts";
import { ENGLISH, type WordKey } from "./english.ts";
import { plainLabels } from "./plain-labels.ts";

describe("plainLabels", () => {
  it.each([
    [quantity("length", 1.7, 2), "1.70\u00a0m"],
    [quantity("length", -0.2, 2), "−0.20\u00a0m"],
    [quantity("length", -0.001, 2), "0.00\u00a0m"],
    [quantity("short-length", 0.2, 0), "20\u00a0cm"],
    [quantity("diameter", 0.34, 0), "34\u00a0cm"],
    [quantity("angle", Math.PI / 6, 0), "30°"],
    [quantity("force", 765, 0), "765\u00a0N"],
    [quantity("hanging", 78 * 9.80665, 0), "78\u00a0kg"],
    [quantity("steps", 5.4, 1), "5½"],
    [quantity("steps", 0.5, 1), "½"],
    [quantity("steps", 5.2, 1), "5"],
    [quantity("slope", 1 / 12, 0), "1 in 12"],
    [quantity("bearing", (7 * Math.PI) / 4, 0), "north-west"],
    [quantity("bearing", 2 * Math.PI - 0.01, 0), "north"],
    [quantity("length", 1.7, 2, "number"), "1.70"],
    [quantity("length", 1.7, 2, "unit"), "m"],
  ])("says %o as %s", (item, said) => expect(plainLabels(item)).toBe(said));

  it("says a day short, or with its weekday", () => {
    expect(plainLabels({ day: "2027-05-14", style: "short" })).toBe("14 May");
    expect(plainLabels({ day: "2027-05-14", style: "with-weekday" })).toBe("Fri 14 May");
    expect(plainLabels({ day: "2024-02-29", style: "with-weekday" })).toBe("Thu 29 Feb");
    expect(plainLabels({ day: "2000-01-01", style: "with-weekday" })).toBe("Sat 1 Jan");
  });

  it("says a height as a place on the body", () => {
    expect(plainLabels({ bodyMarkM: 1.7, statureM: 1.75 })).toBe("forehead");
    expect(plainLabels({ bodyMarkM: 1.84, statureM: 1.7 })).toBe("top of head + 15\u00a0cm");
    expect(plainLabels({ bodyMarkM: 1.9, statureM: 1.7 })).toBe("full reach − 15\u00a0cm");
  });

  it("fills the holes of a sentence, also with other sentences, and never twice", () => {
    const inner = word("berth.pull", { mass: quantity("hanging", 784.5, 0) });
    expect(plainLabels(word("list.two", { first: name("{rest}"), rest: inner }))).toBe(
      "{rest}, like 80\u00a0kg hanging",
    );
  });

  it("has no capitals for whole words but HEAD and FOOT, and no word that promises", () => {
    for (const key of Object.keys(ENGLISH)) {
      const said = ENGLISH[key as WordKey];
      for (const shout of said.match(/\b[A-Z]{2,}\b/g) ?? []) expect(["HEAD", "FOOT"]).toContain(shout);
      expect([key, /\bsafe\b|\bpasses\b|\bholds\b|\bOK\b/i.test(said)]).toEqual([key, false]);
    }
  });
});
