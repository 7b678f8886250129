import type { Camp } from "../plan/camp.ts";
import type { HangKit } from "../statics/hang-screen.ts";
import { dealKit } from "./deal-kit.ts";
import { hangKit, hangLimits } from "./hang-request.ts";

/** What a sleeper of a camp would hang in, wherever that is; nothing where the store has none for them. */
export function findHangKit(camp: Camp, sleeper: string): HangKit | undefined {
  const { dealt } = dealKit(camp.sleepers, camp.kit, camp.rules.strapWidthMinM.value, camp.night);
  const kit = dealt.find((one) => one.sleeper.id === sleeper);
  return kit === undefined ? undefined : hangKit(kit, hangLimits(camp, kit.sleeper.statureM));
}
