import { readdirSync, readFileSync, utimesSync } from "node:fs";
import { createServer, type RequestListener } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { fetchText } from "../files/fetch-text.ts";
import { exampleText, folder, lines, ran } from "../testing.fixture.ts";

const SKY = "at,air_c,wind_m_s,gust_m_s\n2027-05-14T21:00Z,5,2,6\n2027-05-14T22:00Z,4,2,7\n";

/** Asks a server of the test's own, on this machine alone, and ends it. */
async function served<T>(answer: RequestListener, ask: (address: string) => Promise<T>): Promise<T> {
  const server = createServer(answer);
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const { port } = server.address() as AddressInfo;
  try {
    return await ask(`http://127.0.0.1:${port}/sky`);
  } finally {
    server.closeAllConnections();
    await new Promise((done) => server.close(done));
  }
}

const put = (here: string, address: string, ...more: string[]) =>
  ran(["import", address, "--into", "c.camp.json", ...more], { cwd: here });
const start = (files: Readonly<Record<string, string>> = {}) =>
  folder({ "c.camp.json": exampleText("demo"), ...files });
const night = (here: string) =>
  (JSON.parse(readFileSync(join(here, "c.camp.json"), "utf8")) as { night: object }).night;

describe("a forecast from an address", () => {
  it("goes into the camp, and what came is kept beside it", async () => {
    const here = start();
    const told = await served(
      (_, response) => response.end(SKY),
      (address) => put(here, address),
    );
    expect(told).toMatchObject({ code: 0, err: "" });
    expect(night(here)).toMatchObject({ low_c: 4, gust_m_s: 7 });
    expect(readFileSync(join(here, "c.camp.json.fetched"), "utf8")).toBe(SKY);
  });

  it("is asked for once, by a plain request without anything of the camp", async () => {
    const asked: string[] = [];
    await served(
      ({ method, url, headers }, response) => {
        asked.push(`${method} ${url} ${"cookie" in headers} ${"authorization" in headers}`);
        response.end(SKY);
      },
      (address) => put(start(), address),
    );
    expect(asked).toEqual(["GET /sky false false"]);
  });

  it("is read by a mapping too", async () => {
    const mapping = {
      format: "nightspan-mapping/1",
      at: { path: "t" },
      air_c: { path: "k", unit: "K" },
      wind_m_s: { path: "v", unit: "km/h" },
    };
    const here = start({ "map.json": JSON.stringify(mapping) });
    const told = await served(
      (_, response) => response.end(JSON.stringify({ t: ["2027-05-14T21:00Z"], k: [278.15], v: [36] })),
      (address) => put(here, address, "--mapping", "map.json"),
    );
    expect(told.code).toBe(0);
    expect(night(here)).toMatchObject({ low_c: 5 });
  });

  it("that fails leaves the camp as it is and tells the age of the last good copy", async () => {
    const here = start();
    const before = readFileSync(join(here, "c.camp.json"), "utf8");
    const answers = [
      (address: string) => put(here, address),
      async (address: string) => {
        await put(here, `${address}?good`);
        const threeHoursAgo = Date.now() / 1000 - 3 * 3600;
        utimesSync(join(here, "c.camp.json.fetched"), threeHoursAgo, threeHoursAgo);
        return put(here, address);
      },
    ];
    const told: string[] = [];
    for (const answer of answers) {
      const { code, err } = await served((request, response) => {
        if (request.url === "/sky?good") return response.end(SKY);
        response.statusCode = 503;
        return response.end();
      }, answer);
      expect(code).toBe(2);
      if (told.length === 0) expect(readFileSync(join(here, "c.camp.json"), "utf8")).toBe(before);
      told.push(...lines(err).map((line) => line.replace(/^http:[^ ]+: /, "")));
    }
    expect(told).toEqual([
      'address: found "status 503", needed an address that answers',
      "c.camp.json: nothing changed; no copy was fetched before",
      'address: found "status 503", needed an address that answers',
      "c.camp.json: nothing changed; the last good copy is 3 h old: c.camp.json.fetched",
    ]);
    expect(night(here)).toMatchObject({ low_c: 4 });
  });

  it("that no forecast comes from changes nothing and keeps no copy", async () => {
    for (const body of ["<html>busy</html>", "id,x_m,y_m,dbh_cm\n1,0,0,30\n"]) {
      const here = start();
      const told = await served(
        (_, response) => response.end(body),
        (address) => put(here, address),
      );
      expect(told.code).toBe(2);
      expect(readdirSync(here)).toEqual(["c.camp.json"]);
    }
  });

  it("is refused where it sends on, is silent, is too large, is no text or is not there", async () => {
    const got = async (answer: RequestListener, waitMs?: number) => {
      const outcome = await served(answer, (address) => fetchText(address, waitMs));
      return outcome.ok ? [] : outcome.refusals.map((refusal) => refusal.got);
    };
    const on: RequestListener = (_, response) => {
      response.writeHead(302, { location: "http://elsewhere.invalid/" });
      response.end();
    };
    expect(await got(on)).toEqual(["sent on to http://elsewhere.invalid/"]);
    expect(await got(() => undefined, 200)).toEqual(["no answer within 0.2 s"]);
    expect(await got((_, response) => response.end(Buffer.alloc(20_000_001, 32)))).toEqual([
      "more than 20 MB",
    ]);
    expect(await got((_, response) => response.end(Buffer.from([0xff, 0xfe])))).toEqual([
      "bytes that are no text",
    ]);
    const gone = await served(
      (_, response) => response.end(),
      (address) => Promise.resolve(address),
    );
    const outcome = await fetchText(gone);
    expect(outcome.ok ? [] : outcome.refusals.map((refusal) => refusal.got)).toEqual([
      "no answer (ECONNREFUSED)",
    ]);
  });
});
