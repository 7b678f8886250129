/** Kit that was dealt anew together with the places, so that more people have a berth. */
export interface DealtAnew {
  /** How many had a berth with the kit as it was dealt at first. */
  readonly placedBefore: number;
  /** Who has another hammock or suspension than at first, in the order of the camp. */
  readonly changes: readonly DealtChange[];
}

export interface DealtChange {
  readonly sleeper: string;
  readonly kind: "hammock" | "suspension";
  /** Line of the store they had at first; absent where they had none. */
  readonly from?: string;
  readonly to: string;
}
