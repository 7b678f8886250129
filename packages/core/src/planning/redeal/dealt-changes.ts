import type { DealtAnew, DealtChange } from "../../plan/dealt-anew-types.ts";
import type { Plan } from "../../plan/plan.ts";
import type { KitDeal } from "../deal-kit.ts";
import type { KitGiven } from "./redeal-types.ts";

/** What changed between two dealings, of those who have something now. */
export function dealtChanges(first: KitDeal, anew: KitDeal, placedBefore: number): DealtAnew {
  const before = new Map(first.dealt.map((kit) => [kit.sleeper.id, kit]));
  const changes = anew.dealt.flatMap(({ sleeper: { id: sleeper }, ...now }) =>
    KINDS.flatMap((kind): DealtChange[] => {
      const from = before.get(sleeper)?.[kind].id;
      const to = now[kind].id;
      if (from === to || now.assumed.includes(kind)) return [];
      return [{ sleeper, kind, ...(from === undefined ? {} : { from }), to }];
    }),
  );
  return { placedBefore, changes };
}

const KINDS = ["hammock", "suspension"] as const;

/** The kit of a plan that was dealt anew, to deal it so again; nothing of one that was not. */
export function givenIn({ dealtAnew, berths }: Pick<Plan, "dealtAnew" | "berths">): KitGiven | undefined {
  if (dealtAnew === undefined) return undefined;
  return new Map(
    berths.map(({ sleeper, kit: { hammock, suspension } }) => {
      return [sleeper, [hammock, suspension].flatMap((id) => id ?? [])];
    }),
  );
}
