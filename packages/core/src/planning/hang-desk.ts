import { refuse, type Outcome } from "../outcome/outcome.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { hang } from "../statics/hang.ts";
import { KNOT_M, STRAP_OVERLAP_M, TAIL_M, WRAPS } from "../statics/hang-constants.ts";
import { screenHang, type HangPair, type ScreenedHang } from "../statics/hang-screen.ts";
import type { Hang, HangLimits } from "../statics/hang-types.ts";
import type { CampPlace } from "./camp-places-types.ts";
import type { DealtKit } from "./dealt-kit.ts";
import type { FitClass } from "./fit-classes.ts";
import { hangKit, hangPair } from "./hang-request.ts";

/** Works out hangs of classes at places, each once: a quick yes or no, and in full. */
export class HangDesk {
  private readonly full = new Map<number, Outcome<Hang>>();
  private readonly screens: (((pair: HangPair) => ScreenedHang) | undefined)[] = [];
  private readonly pairs: readonly HangPair[];
  private readonly classes: readonly FitClass[];

  constructor(places: readonly CampPlace[], classes: readonly FitClass[]) {
    this.pairs = places.map(hangPair);
    this.classes = classes;
  }

  /** Whether this class may hang there; never "no" where the hang in full would do. */
  serves(classIndex: number, place: number): boolean {
    const known = this.full.get(this.key(classIndex, place));
    if (known !== undefined) return known.ok;
    const { kit, limits } = this.fit(classIndex);
    const pair = this.pair(place);
    if (mayLackWebbing(pair, kit, limits)) return this.hangOf(classIndex, place).ok;
    const screen = (this.screens[classIndex] ??= screenHang(hangKit(kit, limits)));
    return screen(pair).serves;
  }

  /** The hang in full, or every reason why this class cannot hang there. */
  hangOf(classIndex: number, place: number): Outcome<Hang> {
    const key = this.key(classIndex, place);
    const known = this.full.get(key);
    if (known !== undefined) return known;
    const { kit, limits } = this.fit(classIndex);
    const found = hang({ ...hangKit(kit, limits), ...this.pair(place) });
    const outcome = found.ok ? withOwnWebbing(found.value, kit.suspension.strapLengthM) : found;
    this.full.set(key, outcome);
    return outcome;
  }

  private key(classIndex: number, place: number): number {
    return classIndex * this.pairs.length + place;
  }

  private fit(classIndex: number) {
    const fit = this.classes[classIndex];
    if (fit === undefined) throw new Error("no such class");
    return { kit: fit.members[0], limits: fit.limits };
  }

  private pair(place: number): HangPair {
    const pair = this.pairs[place];
    if (pair === undefined) throw new Error("no such place");
    return pair;
  }
}

/** Whether the webbing owned is so short that only the hang in full can tell. */
function mayLackWebbing(
  { spanM, head, foot }: HangPair,
  { suspension }: DealtKit,
  { angleMax }: HangLimits,
): boolean {
  if (suspension.strapLengthM === undefined) return false;
  const girthM = Math.PI * Math.max(head.dbhM, foot.dbhM);
  const longestM = spanM / 2 / Math.cos(angleMax) + WRAPS * girthM + KNOT_M + TAIL_M + STRAP_OVERLAP_M;
  return suspension.strapLengthM < longestM;
}

/** Webbing that is too short to go round and be tied off cannot hang there, whatever the statics say. */
function withOwnWebbing(found: Hang, ownedM: number | undefined): Outcome<Hang> {
  const { head, foot } = found;
  const neededM = Math.max(head.webbingM, foot.webbingM);
  if (ownedM === undefined || neededM <= ownedM + LENGTH_SLACK_M) return { ok: true, value: found };
  const field = head.webbingM >= foot.webbingM ? "head.webbingM" : "foot.webbingM";
  return refuse(field, neededM, `at most the ${ownedM} m that the strap is long`, "sling-longest");
}
