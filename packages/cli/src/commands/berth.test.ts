import { readPlan } from "@nightspan/edge";
import { describe, expect, it } from "vitest";
import { lines, ran } from "../testing.fixture.ts";

describe("berth", () => {
  it("answers a sentence for each tree", async () => {
    const { code, out, err } = await ran(["berth", "--span", "4.5", "--stature", "1.75"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(lines(out)[0]).toBe("Look again.");
    expect(out).toMatch(/\n {2}Tie the head strap round the first tree .*, \d\.\d[05]\u00a0m up\. Let out /);
    expect(out).toMatch(
      /\n {2}Tie the foot strap round the second tree \d+\u00a0cm higher than the head strap, sighted level/,
    );
    expect(out).not.toMatch(/\d\s?(?:kg|N)\b/);
  });

  it("takes steps, feet and pounds", async () => {
    const metric = await ran([
      "berth",
      "--steps",
      "6",
      "--step",
      "0.7",
      "--stature",
      "1.75",
      "--mass",
      "80",
      "--json",
    ]);
    const imperial = await ran([
      "berth",
      "--span",
      "4.2",
      "--stature",
      "68.8976in",
      "--mass",
      "176.37lb",
      "--json",
    ]);
    const height = ({ out }: { out: string }) => {
      const plan = readPlan(out);
      return plan.ok ? plan.value.berths[0]?.hang.head.strap_height_m : undefined;
    };
    expect(height(metric)).toBeCloseTo(height(imperial) ?? NaN, 3);
  });

  it("says why two trees will not do, and ends with 1", async () => {
    const near = await ran(["berth", "--span", "2.9", "--stature", "1.75"]);
    expect(near.code).toBe(1);
    expect(near.out).toContain("stand 2.90\u00a0m apart: less than the 3.00\u00a0m asked for");
    const sling = await ran(["berth", "--span", "3.2", "--stature", "1.75", "--sling", "0.9"]);
    expect(sling.code).toBe(1);
    expect(sling.out).toContain("The strap or sling is too long even at its shortest");
    for (const { out } of [near, sling]) expect(out).toContain("Sleep on the ground");
  });

  it("tells every option that cannot be used, by its name", async () => {
    const { code, out, err } = await ran([
      "berth",
      "--span",
      "4,5",
      "--steps",
      "6",
      "--stature",
      "x",
      "--mass",
      "y",
    ]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(lines(err).map((line) => line.split(": ")[1])).toEqual([
      "--mass",
      "--span",
      "--span",
      "--stature",
    ]);
    const range = await ran(["berth", "--span", "400", "--stature", "17.5"]);
    expect(lines(range.err).map((line) => line.split(": ")[1])).toEqual(["--span", "--stature"]);
    const mixed = await ran(["berth", "--span", "abc", "--stature", "-1"]);
    expect(lines(mixed.err).map((line) => line.split(": ")[1])).toEqual(["--span", "--stature"]);
    const bare = await ran(["berth"]);
    expect(lines(bare.err).map((line) => line.split(": ")[1])).toEqual(["--span", "--stature"]);
    expect(bare.code).toBe(2);
  });
});

describe("berth --table", () => {
  it("prints a line for each half step, marks on the own body, and the angle card", async () => {
    const { code, out, err } = await ran(["berth", "--table", "--stature", "1.6", "--step", "0.65"]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const rows = lines(out).filter((line) => /^ {2}\d½? +\d\.\d\d\u00a0m/.test(line));
    expect(rows.map((row) => row.trim().split(" ")[0])).toEqual(["5", "5½", "6", "6½", "7", "7½"]);
    expect(out).toMatch(/\n {2}30° {2}58\u00a0cm\n/);
    expect(out).toContain("Look up first");
  });

  it("says in a row what berth says for that many steps", async () => {
    const table = await ran(["berth", "--table", "--stature", "1.75"]);
    const single = await ran(["berth", "--steps", "6", "--stature", "1.75", "--json"]);
    const plan = readPlan(single.out);
    const headM = plan.ok ? (plan.value.berths[0]?.hang.head.strap_height_m ?? NaN) : NaN;
    const row = lines(table.out).find((line) => /^ {2}6 /.test(line)) ?? "";
    const told = /(\d\.\d\d)\u00a0m up|, (\d\.\d\d)\u00a0m/.exec(row)?.[2];
    expect(Math.abs(Number(told) - headM)).toBeLessThan(0.0251);
  });

  it("refuses what a table has no use for", async () => {
    const { code, out, err } = await ran(["berth", "--table", "--stature", "1.75", "--span", "4", "--json"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(lines(err).map((line) => line.split(": ")[1])).toEqual(["--span", "--json"]);
  });
});
