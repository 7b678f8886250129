import type { DealtKit } from "../dealt-kit.ts";
import { fitClasses, type FitClass } from "../fit-classes.ts";
import { HangDesk } from "../hang-desk.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import { pullLimits } from "../pull-limits.ts";
import type { DealtTypes } from "./person-types.ts";
import type { KitWay } from "./redeal-types.ts";

export interface KitWays {
  readonly ways: readonly KitWay[];
  readonly classes: readonly FitClass[];
  readonly desk: HangDesk;
}

/** Every way to deal a hammock and a suspension to each type of people, each with its own question to the desk. */
export function kitWays({ camp, unbalanced }: PreparedCamp, { types }: DealtTypes): KitWays {
  const classes: FitClass[] = [];
  const ways = types.flatMap(({ members: [sleeper], hammocks, suspensions }, type) =>
    hammocks.flatMap((hammock) =>
      suspensions.map((suspension): KitWay => {
        const kit: DealtKit = { sleeper, hammock: hammock.line, suspension: suspension.line, assumed: [] };
        classes.push(...fitClasses([kit], camp));
        return { type, hammock, suspension, classIndex: classes.length - 1 };
      }),
    ),
  );
  const desk = new HangDesk(unbalanced.places, classes, pullLimits(unbalanced, camp.rules));
  return { ways, classes, desk };
}
