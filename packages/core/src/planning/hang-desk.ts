import { refuse, type Failure, type Outcome } from "../outcome/outcome.ts";
import type { HouseRules } from "../plan/house-rules.ts";
import { LENGTH_SLACK_M } from "../quantity/constants.ts";
import { hang } from "../statics/hang.ts";
import { hangCore, type HangCore } from "../statics/hang-core.ts";
import { hangRig, type HangRig } from "../statics/hang-rig.ts";
import { screenHang, type HangKit, type HangPair, type ScreenedHang } from "../statics/hang-screen.ts";
import type { Hang, HangInput, OkRange } from "../statics/hang-types.ts";
import { webbingOf } from "../statics/strap-parts.ts";
import type { CampPlace } from "./camp-places-types.ts";
import type { FitClass } from "./fit-classes.ts";
import { hangKit, hangPair } from "./hang-request.ts";
import { endPulls, hardestPull, PULL_SLACK, type EndPull, type PullLimits } from "./pull-limits.ts";
import { spanWindow, type SpanExtras } from "./span-window.ts";

/** Works out hangs of classes at places, each once: a quick yes or no, and in full. */
export class HangDesk {
  private readonly quick = new Map<number, boolean>();
  private readonly full = new Map<number, Outcome<Hang>>();
  private readonly windows = new Map<string, OkRange | undefined>();
  private readonly screens: (((pair: HangPair) => ScreenedHang) | undefined)[] = [];
  private readonly requests: (HangKit | undefined)[] = [];
  private readonly rigs: (HangRig | undefined)[] = [];
  private readonly hardest: (EndPull | undefined)[] = [];
  private readonly places: readonly CampPlace[];
  private readonly pairs: readonly HangPair[];
  private readonly classes: readonly FitClass[];
  private readonly pulls: PullLimits | undefined;

  /** With `pulls` a hang is refused that alone pulls one of its trees too hard. */
  constructor(places: readonly CampPlace[], classes: readonly FitClass[], pulls?: PullLimits) {
    this.pulls = pulls;
    this.places = places;
    this.pairs = places.map(hangPair);
    this.classes = classes;
  }

  /** Whether this class may hang there; never "no" where the hang in full would do. */
  serves(classIndex: number, place: number): boolean {
    const key = this.key(classIndex, place);
    const known = this.full.get(key)?.ok ?? this.quick.get(key);
    if (known !== undefined) return known;
    const screened = this.screened(classIndex, this.pair(place));
    const serves =
      screened && !(this.mightPullTooHard(classIndex, place) && this.pullsTooHard(classIndex, place));
    this.quick.set(key, serves);
    return serves;
  }

  /** The higher of the two straps above its tree's own ground [m]; Infinity where the hang is refused. */
  highestStrapM(classIndex: number, place: number): number {
    const core = this.coreOf(classIndex, this.pair(place));
    if (!core.ok) return Infinity;
    const { headHeightM, footHeightM } = core.value.trial.setting;
    return Math.max(headHeightM, footHeightM);
  }

  /** What the hang does to the first and to the second tree; nothing where it is refused. */
  pullsAt(classIndex: number, place: number): readonly [EndPull, EndPull] | undefined {
    const there = this.places[place];
    const core = this.coreOf(classIndex, this.pair(place));
    if (there === undefined || !core.ok) return undefined;
    const { straps, setting } = core.value.trial;
    const sidewaysN = straps.lying.alongN;
    return endPulls(there, {
      head: { sidewaysN, strapHeightM: setting.headHeightM },
      foot: { sidewaysN, strapHeightM: setting.footHeightM },
    });
  }

  /** The hang in full, or every reason why this class cannot hang there. */
  hangOf(classIndex: number, place: number): Outcome<Hang> {
    const key = this.key(classIndex, place);
    const known = this.full.get(key);
    if (known !== undefined) return known;
    const { kit } = this.fit(classIndex);
    const found = hang(this.requestOf(classIndex, place));
    const own = found.ok ? withOwnWebbing(found.value, kit.suspension.strapLengthM) : found;
    const outcome = own.ok ? this.withinPulls(own.value, place) : own;
    this.full.set(key, outcome);
    return outcome;
  }

  /** What the hang in full is asked for. */
  requestOf(classIndex: number, place: number): HangInput {
    const { request } = this.fit(classIndex);
    const spanErrorM = this.places[place]?.spanErrorM;
    return { ...request, ...this.pair(place), ...(spanErrorM === undefined ? {} : { spanErrorM }) };
  }

  /** The spans at which this class could hang between two such trees; nothing where no span serves. */
  spanWindowOf(
    classIndex: number,
    place: number,
    rules: Pick<HouseRules, "spanMinM" | "spanMaxM">,
    extras: SpanExtras,
  ): OkRange | undefined {
    const key = `${this.key(classIndex, place)} ${JSON.stringify(extras)}`;
    const known = this.windows.get(key);
    if (known !== undefined || this.windows.has(key)) return known;
    const found = spanWindow(this.requestOf(classIndex, place), rules, extras);
    const window = found.ok ? found.value : undefined;
    this.windows.set(key, window);
    return window;
  }

  private mightPullTooHard(classIndex: number, place: number): boolean {
    const fit = this.classes[classIndex];
    if (this.pulls === undefined || fit === undefined) return false;
    const { sidewaysN, momentNm } = (this.hardest[classIndex] ??= hardestPull(fit));
    return sidewaysN > this.pulls.forceN || momentNm > Math.min(...this.pulls.momentNm(place));
  }

  private pullsTooHard(classIndex: number, place: number): boolean {
    const pulls = this.pullsAt(classIndex, place);
    return pulls !== undefined && this.overPull(pulls, place) !== undefined;
  }

  private withinPulls(found: Hang, place: number): Outcome<Hang> {
    const there = this.places[place];
    const over = there === undefined ? undefined : this.overPull(endPulls(there, found), place);
    return over ?? { ok: true, value: found };
  }

  private overPull(pulls: readonly EndPull[], place: number): Failure | undefined {
    if (this.pulls === undefined) return undefined;
    const { forceN } = this.pulls;
    const bends = this.pulls.momentNm(place);
    for (const [end, { sidewaysN, momentNm }] of pulls.entries()) {
      const most = bends[end] ?? Infinity;
      if (sidewaysN > forceN * (1 + PULL_SLACK)) {
        return refuse("sidewaysN", sidewaysN, `at most ${forceN} N at a tree`, "tree-pull");
      }
      if (momentNm > most * (1 + PULL_SLACK)) {
        return refuse("momentNm", momentNm, `at most ${most} N m at that trunk`, "trunk-bend");
      }
    }
    return undefined;
  }

  private screened(classIndex: number, pair: HangPair): boolean {
    const { kit, request } = this.fit(classIndex);
    const screen = (this.screens[classIndex] ??= screenHang(request));
    if (!screen(pair).serves) return false;
    return kit.suspension.strapLengthM === undefined || this.webbingReaches(classIndex, pair);
  }

  private webbingReaches(classIndex: number, pair: HangPair): boolean {
    const { kit, request } = this.fit(classIndex);
    const core = this.coreOf(classIndex, pair);
    if (!core.ok) return false;
    const input = { ...request, ...pair };
    const { headStrapM, footStrapM } = core.value.trial.straps;
    return (
      reaches(kit.suspension.strapLengthM, webbingOf(input, pair.head, headStrapM)) &&
      reaches(kit.suspension.strapLengthM, webbingOf(input, pair.foot, footStrapM))
    );
  }

  private coreOf(classIndex: number, pair: HangPair): Outcome<HangCore> {
    const { request } = this.fit(classIndex);
    const rig = (this.rigs[classIndex] ??= hangRig(request));
    return hangCore(rig, { ...request, ...pair });
  }

  private key(classIndex: number, place: number): number {
    return classIndex * this.pairs.length + place;
  }

  private fit(classIndex: number) {
    const fit = this.classes[classIndex];
    if (fit === undefined) throw new Error("no such class");
    const [kit] = fit.members;
    return { kit, request: (this.requests[classIndex] ??= hangKit(kit, fit.limits)) };
  }

  private pair(place: number): HangPair {
    const pair = this.pairs[place];
    if (pair === undefined) throw new Error("no such place");
    return pair;
  }
}

/** Webbing that is too short to go round and be tied off cannot hang there, whatever the statics say. */
function withOwnWebbing(found: Hang, ownedM: number | undefined): Outcome<Hang> {
  const { head, foot } = found;
  const neededM = Math.max(head.webbingM, foot.webbingM);
  if (reaches(ownedM, neededM)) return { ok: true, value: found };
  const field = head.webbingM >= foot.webbingM ? "head.webbingM" : "foot.webbingM";
  return refuse(field, neededM, `at most the ${ownedM ?? 0} m that the strap is long`, "sling-longest");
}

function reaches(ownedM: number | undefined, neededM: number): boolean {
  return ownedM === undefined || neededM <= ownedM + LENGTH_SLACK_M;
}
