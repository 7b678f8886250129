import { byRule, compare, type Finding } from "../outcome/finding.ts";
import type { Sleeper } from "../plan/camp.ts";
import { DEFAULTS } from "../plan/defaults.ts";
import type { Hammock, KitItem, OverInsulation, Suspension, Tarp, UnderInsulation } from "../plan/kit.ts";
import type { AssumedPart, DealtKit } from "./dealt-kit.ts";
import { byCodeUnit } from "./order.ts";

type BerthKind = "hammock" | "suspension" | "tarp" | "under" | "over";

interface Holding {
  hammock?: Hammock;
  suspension?: Suspension;
  tarp?: Tarp;
  under?: UnderInsulation;
  over?: OverInsulation;
}

/** Cloth should be longer than the sleeper by this much [m]. Source: common-practice, 1.1 to 1.2 m. */
export const CLOTH_OVER_STATURE_M = 1.1;

/** The store while it is being dealt: what is left of each line, and who holds what. */
export class KitStock {
  private readonly left = new Map<string, number>();
  private readonly held = new Map<string, Holding>();
  private readonly usable: readonly KitItem[];
  private readonly hasHammocks: boolean;
  private readonly hasSuspensions: boolean;
  private readonly strapWidthMinM: number;

  constructor(kit: readonly KitItem[], strapWidthMinM: number) {
    this.strapWidthMinM = strapWidthMinM;
    this.usable = kit.filter(({ state }) => state === "in-use").sort((a, b) => byCodeUnit(a.id, b.id));
    this.usable.forEach(({ id, count }) => this.left.set(id, count));
    this.hasHammocks = kit.some(({ kind }) => kind === "hammock");
    this.hasSuspensions = kit.some(({ kind }) => kind === "suspension");
  }

  /** Gives what was kept for this sleeper; one finding for each item that cannot be given. */
  pin(sleeper: Sleeper): Finding[] {
    return sleeper.kit.flatMap((id) => {
      const item = this.usable.find((line) => line.id === id);
      const left = this.left.get(id) ?? 0;
      if (item !== undefined && left > 0) {
        this.hand(sleeper, item);
        return [];
      }
      return [
        byRule(
          {
            rule: "layout.kit-short",
            source: "camp-file",
            subject: `sleeper/${sleeper.id}`,
            sense: "at-least",
            demand: left,
            limit: 1,
            unit: "1",
            about: ["pinned", id],
          },
          "look-again",
        ),
      ];
    });
  }

  giveHammock(sleeper: Sleeper): void {
    if (this.holding(sleeper).hammock !== undefined) return;
    const fits = this.available("hammock").filter(
      ({ maxUserKg }) => sleeper.massKg <= (maxUserKg ?? Infinity),
    );
    const wantM = sleeper.statureM + CLOTH_OVER_STATURE_M;
    this.handBest(sleeper, fits, [
      ({ lengthM }) => (lengthM >= wantM ? 0 : wantM - lengthM),
      ({ maxUserKg }) => maxUserKg ?? Infinity,
      ({ lengthM }) => lengthM,
    ]);
  }

  giveSuspension(sleeper: Sleeper): void {
    if (this.holding(sleeper).suspension !== undefined) return;
    this.handBest(sleeper, this.available("suspension"), [
      ({ strapWidthM }) => (strapWidthM >= this.strapWidthMinM ? 0 : 1),
      (item) => -(item.ratedLoadN ?? (item.breakingN ?? 0) / RATED_SHARE),
    ]);
  }

  giveTarp(sleeper: Sleeper): void {
    if (this.holding(sleeper).tarp !== undefined) return;
    this.handBest(sleeper, this.available("tarp"), [({ ridgeM }) => -ridgeM]);
  }

  giveWarmth(sleeper: Sleeper): void {
    if (this.holding(sleeper).under === undefined) {
      this.handBest(sleeper, this.available("under"), [
        ({ limitK }) => limitK ?? Infinity,
        ({ insulationM2KPerW }) => -(insulationM2KPerW ?? 0),
      ]);
    }
    if (this.holding(sleeper).over === undefined) {
      this.handBest(sleeper, this.available("over"), [
        ({ comfortK }) => comfortK ?? Infinity,
        ({ insulationM2KPerW }) => -(insulationM2KPerW ?? 0),
      ]);
    }
  }

  /** What a sleeper hangs in, or nothing where hammock or suspension is missing. */
  dealtTo(sleeper: Sleeper): DealtKit | undefined {
    const held = this.holding(sleeper);
    const assumed: AssumedPart[] = [];
    if (held.hammock === undefined && !this.hasHammocks) assumed.push("hammock");
    if (held.suspension === undefined && !this.hasSuspensions) assumed.push("suspension");
    const hammock = held.hammock ?? (this.hasHammocks ? undefined : ASSUMED_HAMMOCK);
    const suspension = held.suspension ?? (this.hasSuspensions ? undefined : ASSUMED_SUSPENSION);
    if (hammock === undefined || suspension === undefined) return undefined;
    return { ...held, sleeper, hammock, suspension, assumed };
  }

  /** Which needful kinds this sleeper went without. */
  lacking(sleeper: Sleeper): AssumedPart[] {
    const { hammock, suspension } = this.holding(sleeper);
    const lacks: AssumedPart[] = [];
    if (hammock === undefined && this.hasHammocks) lacks.push("hammock");
    if (suspension === undefined && this.hasSuspensions) lacks.push("suspension");
    return lacks;
  }

  /** How many of a kind are in use. */
  inUse(kind: BerthKind): number {
    return this.usable.reduce((sum, item) => sum + (item.kind === kind ? item.count : 0), 0);
  }

  /** Hammocks that are left over because their makers' greatest weight is below this sleeper's. */
  tooWeakFor(sleeper: Sleeper): Finding[] {
    return this.available("hammock").flatMap(({ id, maxUserKg }) =>
      maxUserKg === undefined
        ? []
        : [
            compare({
              rule: "part.user-weight",
              source: "maker-plate",
              subject: `sleeper/${sleeper.id}`,
              sense: "at-most",
              demand: sleeper.massKg,
              limit: maxUserKg,
              unit: "kg",
              about: [id],
            }),
          ],
    );
  }

  private available<K extends BerthKind>(kind: K): Extract<KitItem, { kind: K }>[] {
    const isKind = (item: KitItem): item is Extract<KitItem, { kind: K }> => item.kind === kind;
    return this.usable.filter((item) => (this.left.get(item.id) ?? 0) > 0).filter(isKind);
  }

  /** Hands over the item that comes first by the given marks, one after the other; ties by id. */
  private handBest<T extends KitItem>(
    sleeper: Sleeper,
    items: readonly T[],
    marks: readonly ((item: T) => number)[],
  ): void {
    const [best] = [...items].sort((a, b) => {
      for (const mark of marks) {
        const [left, right] = [mark(a), mark(b)];
        if (left !== right) return left < right ? -1 : 1;
      }
      return byCodeUnit(a.id, b.id);
    });
    if (best !== undefined) this.hand(sleeper, best);
  }

  private hand(sleeper: Sleeper, item: KitItem): void {
    this.left.set(item.id, (this.left.get(item.id) ?? 0) - 1);
    const held = this.holding(sleeper);
    switch (item.kind) {
      case "hammock":
        held.hammock ??= item;
        break;
      case "suspension":
        held.suspension ??= item;
        break;
      case "tarp":
        held.tarp ??= item;
        break;
      case "under":
        held.under ??= item;
        break;
      case "over":
        held.over ??= item;
        break;
      case "cord":
      case "peg":
      case "connector":
      case "light":
      case "other":
        break;
    }
  }

  private holding(sleeper: Sleeper): Holding {
    const held = this.held.get(sleeper.id) ?? {};
    this.held.set(sleeper.id, held);
    return held;
  }
}

/** To compare parts with a rated load and parts with a breaking strength only. Source: asme-b30-9. */
const RATED_SHARE = 5;

/** Dealt where the store lists no hammock at all. */
export const ASSUMED_HAMMOCK: Hammock = {
  id: "",
  kind: "hammock",
  count: 1,
  state: "in-use",
  lengthM: DEFAULTS["kit.default.hammock.length_m"].value,
  ridgelineM:
    DEFAULTS["kit.default.hammock.length_m"].value * DEFAULTS["kit.default.hammock.ridgeline_ratio"].value,
  widthM: DEFAULTS["kit[].width_m"].value,
  layers: DEFAULTS["kit[].layers"].value,
  net: DEFAULTS["kit[].net"].value,
};

/** Dealt where the store lists no suspension at all. */
export const ASSUMED_SUSPENSION: Suspension = {
  id: "",
  kind: "suspension",
  type: DEFAULTS["kit.default.suspension.type"].value,
  count: 1,
  state: "in-use",
  minM: DEFAULTS["kit[].min_m"].value,
  strapWidthM: DEFAULTS["kit[].strap_width_mm"].value / 1000,
};
