import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { PlannerReply, PlannerRequest } from "../src/shared/planner-messages.ts";
import { builtApp, PHONE, visitFor, waitUntilKept } from "./app.ts";
import { crowdedWood } from "./crowded-wood.ts";

describe("the solver in the built app", () => {
  let workerPath: string;
  const now = visitFor(PHONE, async (visit) => {
    const name = readdirSync(join(await builtApp(), "assets")).find((file) =>
      /^planner\.worker-.*\.js$/.test(file),
    );
    workerPath = `assets/${name ?? "missing"}`;
    await waitUntilKept(visit.page);
    await visit.goOffline();
    await visit.page.reload();
    await visit.page.waitForSelector(".door");
  });

  /** Asks the app's own worker file, in the app's own page, and waits for the last word. */
  async function askWorker(request: PlannerRequest): Promise<PlannerReply> {
    return now.page.evaluate(
      ([path, asked]) =>
        new Promise<PlannerReply>((resolve, reject) => {
          const worker = new Worker(new URL(path, document.baseURI), { type: "module" });
          worker.onerror = (event) => reject(new Error(event.message));
          worker.onmessageerror = () => reject(new Error("unreadable message"));
          worker.onmessage = ({ data }: MessageEvent<PlannerReply>) => {
            if (data.kind === "incumbent" || data.kind === "pairs") return;
            worker.terminate();
            resolve(data);
          };
          worker.postMessage(asked);
        }),
      [workerPath, request] as const,
    );
  }

  it("solves a program of known optimum offline, under the page's policy", async () => {
    expect(await askWorker({ kind: "prove", id: 1 })).toEqual({
      kind: "proof",
      id: 1,
      solver: "highs",
      objective: 5,
    });
  });

  it("proves a crowded wood with it", async () => {
    const reply = await askWorker({
      kind: "plan",
      id: 2,
      document: crowdedWood({ trees: 420, sleepers: 40 }),
    });
    if (reply.kind !== "plan" || !reply.outcome.ok) throw new Error(JSON.stringify(reply).slice(0, 500));
    expect(reply.solved).toBe(true);
    const { placed, bound, gap } = reply.outcome.value;
    expect(placed).toBe(bound);
    expect(gap).toBe(0);
  });

  it("met no breach of the policy", () => {
    expect(
      now.complaints.filter((text) => !/ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED/.test(text)),
    ).toEqual([]);
  });
});
