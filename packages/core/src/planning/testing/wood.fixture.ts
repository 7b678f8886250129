import fc from "fast-check";
import { at, camp, hammock, sleeper, webbing } from "./camp.fixture.ts";

/** A small wood on a slope with some trees that must not be used, for a few people of all sizes. */
export const WOOD = fc
  .record({
    stems: fc.array(
      fc.record({
        x: fc.integer({ min: 0, max: 200 }),
        y: fc.integer({ min: 0, max: 200 }),
        dbh: fc.integer({ min: 18, max: 45 }),
        condition: fc.constantFrom(
          "healthy",
          "healthy",
          "healthy",
          "healthy",
          "healthy",
          "not-looked-at",
          "doubtful",
        ),
      }),
      { minLength: 16, maxLength: 30 },
    ),
    people: fc.array(
      fc.record({ kg: fc.integer({ min: 35, max: 110 }), cm: fc.integer({ min: 130, max: 195 }) }),
      {
        maxLength: 5,
      },
    ),
    downhill: fc.integer({ min: 0, max: 7 }),
    sling: fc.boolean(),
  })
  .map(({ stems, people, downhill, sling }) => {
    const trees = stems.map(({ x, y, dbh, condition }) =>
      at(x / 10, y / 10, { dbhM: dbh / 100, condition, heightM: 3 }),
    );
    const sleepers = people.map(({ kg, cm }, index) =>
      sleeper(`s${index}`, { massKg: kg, statureM: cm / 100 }),
    );
    const store = [
      hammock("h", { count: 5 }),
      sling
        ? webbing("w", { count: 5, type: "whoopie-sling", minM: 0.45, maxM: 1.2 })
        : webbing("w", { count: 5 }),
    ];
    return camp()
      .trees(...trees)
      .ground({ slope: { riseRatio: 0.12, downhillRad: (downhill * Math.PI) / 4 } })
      .sleepers(...sleepers)
      .kit(...store)
      .build();
  });
