import type { Plan } from "@nightspan/core";

/** What the layout costs, the least that any could, and how it was found: for whoever asks why. */
export function sayCost({
  cost,
  lowerBound,
  gap,
  method,
}: Pick<Plan, "cost" | "lowerBound" | "gap" | "method">): string {
  const percent = (gap * 100).toFixed(2);
  return `Cost ${cost.toFixed(4)}, at least ${lowerBound.toFixed(4)}; gap ${percent} %. ${method}.`;
}
