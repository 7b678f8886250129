import { describe, expect, it } from "vitest";
import { findHangKit } from "./find-hang-kit.ts";
import { at, camp, hammock, sleeper, webbing } from "./testing/camp.fixture.ts";
import { onlyBerth, planned } from "./testing/planned.fixture.ts";

describe("findHangKit", () => {
  it("is what the plan asks for at every pair", () => {
    const wood = camp().trees(at(0, 0), at(4.2, 0)).sleepers(1).build();
    const { request } = onlyBerth(planned(wood));
    expect(findHangKit(wood, "s1")).toEqual({
      hammock: request?.hammock,
      suspension: request?.suspension,
      sleeper: request?.sleeper,
      targets: request?.targets,
      limits: request?.limits,
    });
  });

  it("finds nothing for who is not there, or whom the store has nothing for", () => {
    const two = camp()
      .sleepers(sleeper("a"), sleeper("b"))
      .kit(hammock("h"), webbing("w", { count: 2 }));
    const found = ["a", "b", "c"].map((id) => findHangKit(two.build(), id) !== undefined);
    expect(found.filter(Boolean).length).toBe(1);
    expect(found[2]).toBe(false);
  });
});
