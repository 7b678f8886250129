import { planCamp, type Camp, type Plan } from "@nightspan/core";
import { ENGINE, readCamp } from "@nightspan/edge";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { planWithSolver } from "./plan-with-solver.ts";
import { loadSolver } from "./solver/load-solver.ts";
import { exampleText } from "./testing.fixture.ts";

vi.mock("./solver/load-solver.ts", { spy: true });

function opened(text: string): Camp {
  const camp = readCamp(text);
  if (!camp.ok) throw new Error(JSON.stringify(camp.refusals));
  return camp.value.camp;
}

/** A planted wood in rows 3.3 m apart, where every tree has a handful of others in range. */
function planted(rows: number, people: number): Camp {
  const trees = Array.from({ length: rows * rows }, (_, at) => ({
    id: `t${String(at).padStart(3, "0")}`,
    x_m: 3.3 * (at % rows) + 0.2 * Math.sin(7 * at),
    y_m: 3.3 * Math.floor(at / rows) + 0.2 * Math.cos(5 * at),
    dbh_cm: 30,
  }));
  const sleepers = Array.from({ length: people }, (_, at) => ({
    id: `s${at}`,
    name: `S ${at}`,
    stature_m: 1.7,
  }));
  const rules = { footprint_half_width_m: 0.8 };
  return opened(
    JSON.stringify({ format: "nightspan-camp/1", name: "Planted", ground: { trees }, rules, sleepers }),
  );
}

async function planned(camp: Camp): Promise<Plan> {
  const plan = await planWithSolver(camp);
  if (!plan.ok) throw new Error(JSON.stringify(plan.refusals));
  return plan.value;
}

describe("planning with the solver loaded when it is asked for", () => {
  beforeEach(() => {
    vi.mocked(loadSolver).mockClear();
  });

  it("does not load it for the camps of the examples", async () => {
    for (const name of ["demo", "pairs"]) await planned(opened(exampleText(name)));
    expect(loadSolver).not.toHaveBeenCalled();
  });

  it("loads it once for a wood too entangled for small means, and proves the layout with it", async () => {
    const camp = planted(8, 12);
    const plan = await planned(camp);
    expect(loadSolver).toHaveBeenCalledTimes(1);
    expect(plan).toMatchObject({ placed: 12, gap: 0 });
    const alone = planCamp(camp, { engine: ENGINE });
    expect(alone.ok && alone.value.cost).toBeGreaterThanOrEqual(plan.cost - 1e-9);
  });

  it("passes on what goes wrong for another reason", async () => {
    const camp = planted(8, 12);
    const broken = planWithSolver(camp, {
      onIncumbent: () => {
        throw new Error("told nobody");
      },
    });
    await expect(broken).rejects.toThrow("told nobody");
  });
});
