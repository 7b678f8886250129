import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { exampleText, folder, lines, ran } from "../testing.fixture.ts";

const GOOD = "id,x_m,y_m,dbh_cm\n1,0,0,30\n2,4,0,30\n";
const BAD = "id,x_m,y_m,dbh_cm\n1,0,0,30\n2,x,0,30\n3,8,0,\n";

interface Camp {
  readonly name: string;
  readonly owls?: number;
  readonly night: object;
  readonly kit: readonly { readonly id: string; readonly inspections?: readonly object[] }[];
  readonly ground: {
    readonly trees: readonly { readonly id: string }[];
    readonly obstacles: readonly object[];
  };
}

function start(trees: string, name = "trees.csv"): string {
  const camp = exampleText("demo").replace('"date"', '"owls": 3,\n  "date"');
  return folder({ "c.camp.json": camp, [name]: trees });
}

function camp(here: string): Camp {
  return JSON.parse(readFileSync(join(here, "c.camp.json"), "utf8")) as Camp;
}

describe("import", () => {
  it("puts the trees in place of the old ones, keeps all else, and the old file beside", async () => {
    const here = start(GOOD);
    const before = readFileSync(join(here, "c.camp.json"), "utf8");
    const { code, err } = await ran(["import", "trees.csv", "--into", "c.camp.json"], { cwd: here });
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(camp(here).ground.trees.map(({ id }) => id)).toEqual(["1", "2"]);
    expect(camp(here).owls).toBe(3);
    expect(camp(here).ground.obstacles).toHaveLength(5);
    expect(readFileSync(join(here, "c.camp.json.before"), "utf8")).toBe(before);
    expect(readdirSync(here).sort()).toEqual(["c.camp.json", "c.camp.json.before", "trees.csv"]);
  });

  it("names stems nearer than their trunks allow, and imports them", async () => {
    const here = start(`${GOOD}3,4.2,0,30\n`);
    const { code, err } = await ran(["import", "trees.csv", "--into", "c.camp.json"], { cwd: here });
    expect(code).toBe(0);
    expect(err).toBe(
      "c.camp.json: look again: Stems nearer than their trunks allow, 0.20\u00a0m apart: 2 and 3. Find out which is right.\n",
    );
    expect(camp(here).ground.trees).toHaveLength(3);
  });

  it("keeps every state there was when it imports again", async () => {
    const here = start(GOOD);
    const first = readFileSync(join(here, "c.camp.json"), "utf8");
    await ran(["import", "trees.csv", "--into", "c.camp.json"], { cwd: here });
    const second = readFileSync(join(here, "c.camp.json"), "utf8");
    writeFileSync(join(here, "trees.csv"), GOOD.replace("30", "31"));
    const { out } = await ran(["import", "trees.csv", "--into", "c.camp.json"], { cwd: here });
    expect(out).toContain("as it was: c.camp.json.before.2\n");
    expect(readFileSync(join(here, "c.camp.json.before"), "utf8")).toBe(first);
    expect(readFileSync(join(here, "c.camp.json.before.2"), "utf8")).toBe(second);
  });

  it("imports nothing beside a bad row, and names each by its line", async () => {
    const here = start(BAD);
    const before = readFileSync(join(here, "c.camp.json"), "utf8");
    const { code, out, err } = await ran(["import", "trees.csv", "--into", "c.camp.json"], { cwd: here });
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(lines(err)).toEqual([
      'trees.csv: line 3: x_m: found "x", needed a number',
      "trees.csv: line 4: dbh_cm: found nothing, needed dbh_cm, the trunk's diameter, or girth_cm, round it",
      "trees.csv: nothing imported; --skip-bad leaves those rows out",
    ]);
    expect(readFileSync(join(here, "c.camp.json"), "utf8")).toBe(before);
    expect(existsSync(join(here, "c.camp.json.before"))).toBe(false);
  });

  it("leaves bad rows out with --skip-bad, and says so", async () => {
    const here = start(BAD);
    const { code, err } = await ran(["import", "trees.csv", "--into", "c.camp.json", "--skip-bad"], {
      cwd: here,
    });
    expect(code).toBe(0);
    expect(lines(err).at(-1)).toBe("trees.csv: 2 left out");
    expect(camp(here).ground.trees.map(({ id }) => id)).toEqual(["1"]);
  });

  it("does nothing to a camp that cannot be used, nor with a list that has no good row", async () => {
    const here = folder({
      "c.camp.json": "{}",
      "trees.csv": GOOD,
      "none.csv": "id,x_m,y_m,dbh_cm\n1,x,0,30\n",
    });
    const broken = await ran(["import", "trees.csv", "--into", "c.camp.json"], { cwd: here });
    expect(broken.code).toBe(2);
    expect(lines(broken.err)).toHaveLength(3);
    const empty = await ran(["import", "none.csv", "--into", "c.camp.json", "--skip-bad"], {
      cwd: start(BAD),
    });
    expect(empty.code).toBe(2);
    expect(readdirSync(here).sort()).toEqual(["c.camp.json", "none.csv", "trees.csv"]);
  });

  it("puts a forecast, kit and inspections in, and export takes the same lists out", async () => {
    const here = start(
      "at,air_c,wind_m_s,gust_m_s\n2027-05-14T21:00Z,5,2,6\n2027-05-14T22:00Z,4,2,7\n",
      "sky.csv",
    );
    const put = (file: string, ...more: string[]) =>
      ran(["import", file, "--into", "c.camp.json", ...more], { cwd: here });
    const sky = await put("sky.csv");
    expect(sky).toMatchObject({ code: 0, err: "" });
    expect(sky.out).toContain("2 hours of forecast from sky.csv in place of");
    expect(camp(here).night).toMatchObject({
      low_c: 4,
      high_c: 5,
      gust_m_s: 7,
      hours: [{ air_c: 5 }, { air_c: 4 }],
    });
    const out = await ran(["export", "c.camp.json", "kit"], { cwd: here });
    writeFileSync(join(here, "kit.csv"), out.out);
    const before = camp(here);
    expect((await put("kit.csv")).code).toBe(0);
    expect(camp(here)).toEqual(before);
    const [first] = camp(here).kit;
    writeFileSync(
      join(here, "looks.csv"),
      `item,on,by,action,finding\n${first?.id ?? ""},2027-05-01,Maren,pass,sound\n`,
    );
    expect((await put("looks.csv")).code).toBe(0);
    expect(camp(here).kit[0]?.inspections).toEqual([
      { on: "2027-05-01", by: "Maren", action: "pass", finding: "sound" },
    ]);
    expect((await ran(["export", "c.camp.json", "socks"], { cwd: here })).code).toBe(2);
  });

  it("reads any JSON by a mapping", async () => {
    const sky = { t: ["2027-05-14T21:00Z"], k: [278.15], v: [36] };
    const mapping = {
      format: "nightspan-mapping/1",
      at: { path: "t" },
      air_c: { path: "k", unit: "K" },
      wind_m_s: { path: "v", unit: "km/h" },
    };
    const here = start(JSON.stringify(sky), "sky.json");
    writeFileSync(join(here, "map.json"), JSON.stringify(mapping));
    const plain = await ran(["import", "sky.json", "--into", "c.camp.json"], { cwd: here });
    expect(plain.code).toBe(2);
    expect(plain.err).toContain("--mapping");
    const mapped = await ran(["import", "sky.json", "--into", "c.camp.json", "--mapping", "map.json"], {
      cwd: here,
    });
    expect(mapped.code).toBe(0);
    expect(camp(here).night).toMatchObject({ low_c: 5, wind_m_s: 10 });
    writeFileSync(join(here, "map.json"), "{}");
    const bad = await ran(["import", "sky.json", "--into", "c.camp.json", "--mapping", "map.json"], {
      cwd: here,
    });
    expect(bad.code).toBe(2);
    expect(bad.err).toMatch(/^map\.json: format: /);
  });

  it("reads GeoJSON and GPX", async () => {
    const features = [
      {
        type: "Feature",
        geometry: { type: "Point", coordinates: [7, 45] },
        properties: { id: "A", dbh_cm: 30 },
      },
    ];
    const here = start(JSON.stringify({ type: "FeatureCollection", features }), "trees.geojson");
    expect((await ran(["import", "trees.geojson", "--into", "c.camp.json"], { cwd: here })).code).toBe(0);
    expect(camp(here).ground).toMatchObject({ source: "gps", origin: { lat_deg: 45, lon_deg: 7 } });
    const waypoint = (name: string, note: string) =>
      `<wpt lat="46" lon="7"><name>${name}</name><cmt>${note}</cmt></wpt>`;
    const gpx = `<gpx>${waypoint("G1", "dbh 32 cm")}\n${waypoint("G2", "birch")}</gpx>`;
    const there = start(gpx, "t.gpx");
    const bad = await ran(["import", "t.gpx", "--into", "c.camp.json"], { cwd: there });
    expect(bad.code).toBe(2);
    expect(bad.err).toContain('t.gpx: line 2: dbh_cm: found "birch; G2", needed the trunk in the comment');
    expect((await ran(["import", "t.gpx", "--into", "c.camp.json", "--skip-bad"], { cwd: there })).code).toBe(
      0,
    );
    expect(camp(there).ground).toMatchObject({ source: "gps", trees: [{ id: "G1", x_m: 0, dbh_cm: 32 }] });
  });
});
