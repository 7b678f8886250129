import { endedBerths } from "../ended-berths.ts";
import type { PreparedCamp } from "../prepare-camp.ts";
import type { KitWays } from "./kit-ways.ts";
import type { KitSeat } from "./kit-program.ts";

/**
 * Closes the ways to hang that are refused once worked out in full, or that come out "do not hang", at every place
 * once one was found so. What was dealt at first is kept whatever its verdict: the layout as dealt may have it too.
 */
export class WayJudge {
  private readonly verdicts = new Map<string, boolean>();
  private readonly prepared: PreparedCamp;
  private readonly given: KitWays;
  private readonly open: readonly Uint8Array[];

  constructor(prepared: PreparedCamp, given: KitWays, open: readonly Uint8Array[]) {
    this.prepared = prepared;
    this.given = given;
    this.open = open;
  }

  /** Whether all may be; where one may not, its way is closed wherever it may not. */
  closeBad(seats: readonly KitSeat[]): boolean {
    const bad = seats.filter((seat) => !this.mayHang(seat));
    for (const { way } of bad) {
      this.open[way]?.forEach((flag, place, row) => {
        row[place] = flag === 1 && this.mayHang({ way, place }) ? 1 : 0;
      });
    }
    return bad.length === 0;
  }

  private mayHang({ way, place }: KitSeat): boolean {
    const key = `${way} ${place}`;
    const known = this.verdicts.get(key);
    if (known !== undefined) return known;
    const may = this.judged({ way, place });
    this.verdicts.set(key, may);
    return may;
  }

  private judged({ way, place }: KitSeat): boolean {
    const { camp, unbalanced: ground } = this.prepared;
    const { ways, classes, desk } = this.given;
    const { classIndex = -1, hammock, suspension } = ways[way] ?? {};
    const kit = classes[classIndex]?.members[0];
    if (kit === undefined || !desk.hangOf(classIndex, place).ok) return false;
    if (hammock?.asDealt === true && suspension?.asDealt === true) return true;
    const [found] = endedBerths({ camp, ground, classes, desk, isInterim: true }, [
      { place, classIndex, kit },
    ]);
    return found !== undefined && found.berth.verdict !== "do-not-hang";
  }
}
