import type { Plan } from "@nightspan/core";

/** How sure it is that nobody else can have a berth; nothing where everybody has one. */
export function sayProof({
  placed,
  asked,
  bound,
  robust,
}: Pick<Plan, "placed" | "asked" | "bound" | "robust">): readonly string[] {
  if (placed >= asked) return [];
  const most =
    placed === bound
      ? `No layout of these trees ${robust?.asSurveyed === undefined ? "as surveyed" : "with that room kept"} places more, and no other dealing of the kit that could be hung.`
      : `At most ${bound} could be placed; the search did not settle it.`;
  const might = robust === undefined ? 0 : Math.min(robust.most, asked);
  if (placed !== bound || might <= placed) return [most];
  return [most, `Were the positions known better, up to ${might} might have one.`];
}
