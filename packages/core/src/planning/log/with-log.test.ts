import { describe, expect, it } from "vitest";
import { ICE_K } from "../../heat/heat-units.ts";
import { learntOffset } from "../../heat/learnt-offset.ts";
import type { LoggedNight, LoggedSleeper } from "../../plan/log-types.ts";
import { camp, sleeper } from "../testing/camp.fixture.ts";
import { learntOf, withLog } from "./with-log.ts";

function night(logged: LoggedSleeper, change: Partial<LoggedNight> = {}): LoggedNight {
  return { camp: "Beech hill", date: "2027-05-14", sleepers: [logged], ...change };
}

const GROWN = { ...sleeper("ada"), ageYears: 34 };
const CHILD = { ...sleeper("ada"), ageYears: 12 };

describe("a sleeper's nights", () => {
  it("teach each half from its own answers, and nothing about anybody else", () => {
    const log = [
      night({ sleeper: "ada", under: { felt: "cold", marginK: 3 }, over: { felt: "right", marginK: 5 } }),
      night({ sleeper: "bo", under: { felt: "warm", marginK: 1 } }),
    ];
    const learnt = learntOf(GROWN, log);
    expect(learnt).toEqual({
      by: "nights",
      under: learntOffset([{ felt: "cold", marginK: 3 }]),
      over: learntOffset([{ felt: "right", marginK: 5 }]),
    });
    expect(learntOf({ ...GROWN, id: "cy" }, log)).toBeUndefined();
  });

  it("count by the air that was measured", () => {
    const logged = { sleeper: "ada", under: { felt: "cold", marginK: 3 } } as const;
    const measured = { plannedLowK: ICE_K + 5, measuredLowK: ICE_K + 1 };
    const learnt = learntOf(GROWN, [night(logged, measured)]);
    expect(learnt?.by === "nights" && learnt.under).toEqual(learntOffset([{ felt: "cold", marginK: -1 }]));
  });

  it("are left out where the leader says so, or where no margin is known", () => {
    const logged = { sleeper: "ada", under: { felt: "cold", marginK: 3 } } as const;
    expect(learntOf(GROWN, [night({ ...logged, leaveOut: true })])).toBeUndefined();
    expect(learntOf(GROWN, [night({ sleeper: "ada", under: { felt: "cold" } })])).toBeUndefined();
  });

  it("give a child one word and no figure", () => {
    const log = [
      night({ sleeper: "ada", under: { felt: "cool" }, over: { felt: "right" } }),
      night({ sleeper: "ada", under: { felt: "right" }, over: { felt: "warm" } }),
    ];
    expect(learntOf(CHILD, log)).toEqual({
      by: "youth-rule",
      under: "warmer-than-the-rule",
      over: "as-the-rule",
    });
  });

  it("are there for a camp of one as for any, and change nothing in a camp of nobody", () => {
    const log = [
      night({ sleeper: "ada", under: { felt: "cold", marginK: 3 }, over: { felt: "right", marginK: 5 } }),
    ];
    const alone = camp().sleepers(GROWN).build();
    expect(withLog(alone, log).sleepers).toEqual([{ ...GROWN, learnt: learntOf(GROWN, log) }]);
    const nobody = camp().sleepers().build();
    expect(withLog(nobody, log)).toEqual(nobody);
    expect(withLog(alone, [])).toEqual(alone);
  });
});
