import { byRule, type Finding } from "../../outcome/finding.ts";
import type { Sleeper } from "../../plan/camp.ts";
import type { Hammock, KitItem, OverInsulation, Suspension, Tarp, UnderInsulation } from "../../plan/kit.ts";
import type { DealtKind } from "../../plan/store-types.ts";
import { byCodeUnit } from "../order.ts";
import { piecesInUse } from "./pieces-in-use.ts";

interface LinesByKind {
  readonly hammock: Hammock;
  readonly suspension: Suspension;
  readonly tarp: Tarp;
  readonly under: UnderInsulation;
  readonly over: OverInsulation;
}

export type LineOf<K extends DealtKind> = LinesByKind[K];

/** What one sleeper was given; `pinned` names the kinds that were kept for them. */
export interface Holding {
  hammock?: LineOf<"hammock">;
  suspension?: LineOf<"suspension">;
  tarp?: LineOf<"tarp">;
  under?: LineOf<"under">;
  over?: LineOf<"over">;
  readonly pinned: Set<DealtKind>;
}

/** The store while it is being dealt: how many pieces of each line are left, and who holds what. */
export class StoreHands {
  /** Every line, sorted by id. */
  private readonly all: readonly KitItem[];
  private readonly left = new Map<string, number>();
  private readonly held = new Map<string, Holding>();

  constructor(kit: readonly KitItem[]) {
    this.all = [...kit].sort((a, b) => byCodeUnit(a.id, b.id));
    this.all.forEach((line) => this.left.set(line.id, piecesInUse(line)));
  }

  /** Whether the store lists any of a kind, in use or not. */
  lists(kind: DealtKind): boolean {
    return this.all.some((line) => line.kind === kind);
  }

  /** How many pieces of a kind may be dealt in all. */
  inUse(kind: DealtKind): number {
    return this.all.reduce((sum, line) => sum + (line.kind === kind ? piecesInUse(line) : 0), 0);
  }

  /** Every line of a kind, in use or not. */
  lines<K extends DealtKind>(kind: K): LineOf<K>[] {
    const isKind = (line: KitItem): line is LineOf<K> => line.kind === kind;
    return this.all.filter(isKind);
  }

  /** Lines of a kind that have pieces left. */
  available<K extends DealtKind>(kind: K): LineOf<K>[] {
    return this.lines(kind).filter(({ id }) => this.leftOf(id) > 0);
  }

  /** Pieces of a line that nobody has kept for them. */
  dealable(line: KitItem, kind: DealtKind): number {
    const kept = [...this.held.values()].filter((held) => held.pinned.has(kind) && held[kind] === line);
    return piecesInUse(line) - kept.length;
  }

  leftOf(id: string): number {
    return this.left.get(id) ?? 0;
  }

  holding({ id }: Pick<Sleeper, "id">): Holding {
    const held = this.held.get(id) ?? { pinned: new Set<DealtKind>() };
    this.held.set(id, held);
    return held;
  }

  heldOf<K extends DealtKind>(sleeper: Pick<Sleeper, "id">, kind: K): LineOf<K> | undefined {
    const held: { readonly [Kind in DealtKind]?: LineOf<Kind> } = this.holding(sleeper);
    return held[kind];
  }

  /** Gives what was kept for this sleeper; one finding for each item that cannot be given. */
  pin(sleeper: Sleeper): Finding[] {
    return sleeper.kit.flatMap((id) => {
      const line = this.all.find((one) => one.id === id);
      const left = this.leftOf(id);
      if (line === undefined || left <= 0) return [notGiven(sleeper, id, left)];
      const kind = this.give(sleeper, line);
      if (kind !== undefined) this.holding(sleeper).pinned.add(kind);
      return [];
    });
  }

  /** Hands a piece over; the kind of it where it is one that is dealt. */
  give(sleeper: Pick<Sleeper, "id">, line: KitItem): DealtKind | undefined {
    this.left.set(line.id, this.leftOf(line.id) - 1);
    const held = this.holding(sleeper);
    switch (line.kind) {
      case "hammock":
        held.hammock ??= line;
        return line.kind;
      case "suspension":
        held.suspension ??= line;
        return line.kind;
      case "tarp":
        held.tarp ??= line;
        return line.kind;
      case "under":
        held.under ??= line;
        return line.kind;
      case "over":
        held.over ??= line;
        return line.kind;
      case "cord":
      case "peg":
      case "connector":
      case "light":
      case "other":
        return undefined;
    }
  }

  /** Puts pieces by that nobody lies in. */
  putBy(id: string, count: number): void {
    this.left.set(id, this.leftOf(id) - count);
  }
}

function notGiven({ id: sleeper }: Sleeper, item: string, left: number): Finding {
  return byRule(
    {
      rule: "layout.kit-short",
      source: "camp-file",
      subject: `sleeper/${sleeper}`,
      sense: "at-least",
      demand: left,
      limit: 1,
      unit: "1",
      about: ["pinned", item],
    },
    "look-again",
  );
}
