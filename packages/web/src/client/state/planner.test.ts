import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { PlannerReply, PlannerRequest } from "../../shared/planner-messages.ts";
import { Planner, type WorkerLike } from "./planner.ts";

class FakeWorker implements WorkerLike {
  onmessage: WorkerLike["onmessage"] = null;
  onerror: WorkerLike["onerror"] = null;
  onmessageerror: WorkerLike["onmessageerror"] = null;
  readonly asked: PlannerRequest[] = [];
  ended = false;
  postMessage(request: PlannerRequest): void {
    this.asked.push(request);
  }
  terminate(): void {
    this.ended = true;
  }
  reply(data: PlannerReply): void {
    this.onmessage?.(new MessageEvent("message", { data }));
  }
}

const camp = (name: string) => ({
  format: "nightspan-camp/1" as const,
  name,
  sleepers: [{ id: "a", name: "A", stature_m: 1.7 }],
});
const refused = { ok: false, refusals: [] } as const;

function setUp() {
  const workers: FakeWorker[] = [];
  const told: string[] = [];
  const planner = new Planner(
    () => {
      const worker = new FakeWorker();
      workers.push(worker);
      return worker;
    },
    {
      started: (id) => told.push(`started ${id}`),
      pairs: (id, { pairs }) => told.push(`pairs ${id}: ${pairs.length}`),
      incumbent: (id) => told.push(`incumbent ${id}`),
      answered: (id) => told.push(`answered ${id}`),
      mistaken: (details) => told.push(`mistaken ${details}`),
    },
    { restMs: 100, patienceMs: 400 },
  );
  return { planner, workers, told };
}

describe("planner", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it("plans once for a run of quick changes, the last of them", () => {
    const { planner, workers } = setUp();
    planner.plan(camp("one"));
    vi.advanceTimersByTime(50);
    planner.plan(camp("two"));
    vi.advanceTimersByTime(100);
    expect(workers[0]?.asked).toEqual([{ kind: "plan", id: 2, document: camp("two") }]);
  });

  it("drops an answer to an outdated camp and sends the newest", () => {
    const { planner, workers, told } = setUp();
    planner.plan(camp("old"));
    vi.advanceTimersByTime(100);
    planner.plan(camp("new"));
    vi.advanceTimersByTime(100);
    workers[0]?.reply({ kind: "plan", id: 1, outcome: refused, solved: false });
    workers[0]?.reply({ kind: "plan", id: 2, outcome: refused, solved: false });
    expect(told).toEqual(["started 1", "started 2", "answered 2"]);
    expect(workers).toHaveLength(1);
  });

  it("passes on pairs and plans on the way, of the newest camp alone", () => {
    const { planner, workers, told } = setUp();
    const found = { asked: 2, pairs: [["A", "B"]] } as const;
    planner.plan(camp("old"));
    vi.advanceTimersByTime(100);
    workers[0]?.reply({ kind: "pairs", id: 1, found });
    planner.plan(camp("new"));
    vi.advanceTimersByTime(100);
    workers[0]?.reply({ kind: "pairs", id: 1, found });
    workers[0]?.reply({ kind: "plan", id: 1, outcome: refused, solved: false });
    workers[0]?.reply({ kind: "pairs", id: 2, found });
    expect(told).toEqual(["started 1", "pairs 1: 1", "started 2", "pairs 2: 1"]);
  });

  it("ends a worker that stays long at an outdated camp", () => {
    const { planner, workers } = setUp();
    planner.plan(camp("old"));
    vi.advanceTimersByTime(100);
    planner.plan(camp("new"));
    vi.advanceTimersByTime(499);
    expect(workers[0]?.ended).toBe(false);
    vi.advanceTimersByTime(1);
    expect(workers[0]?.ended).toBe(true);
    expect(workers[1]?.asked).toEqual([{ kind: "plan", id: 2, document: camp("new") }]);
  });

  it("stops at once, and plans again with a new worker", () => {
    const { planner, workers, told } = setUp();
    planner.plan(camp("one"));
    vi.advanceTimersByTime(100);
    planner.stop();
    expect(workers[0]?.ended).toBe(true);
    planner.plan(camp("two"));
    vi.advanceTimersByTime(100);
    expect(workers[1]?.asked).toHaveLength(1);
    expect(told).toEqual(["started 1", "started 2"]);
  });

  it("tells of a broken worker and of an unreadable message, and works again", () => {
    const { planner, workers, told } = setUp();
    planner.plan(camp("one"));
    vi.advanceTimersByTime(100);
    workers[0]?.onmessageerror?.(new MessageEvent("messageerror"));
    expect(told.at(-1)).toBe("mistaken A message between page and worker could not be read.");
    planner.plan(camp("two"));
    vi.advanceTimersByTime(100);
    expect(workers).toHaveLength(2);
  });
});
