import { computed, signal } from "@preact/signals";

const faulty = signal<ReadonlySet<string>>(new Set());

export const faultCount = computed(() => faulty.value.size);

/** Notes whether the field with this id has a fault now. */
export function noteFault(id: string, isFaulty: boolean): void {
  const before = faulty.peek();
  if (before.has(id) === isFaulty) return;
  const after = new Set(before);
  if (isFaulty) after.add(id);
  else after.delete(id);
  faulty.value = after;
}

/** Jumps to the first field of the page that has a fault, out of a closed part if need be. */
export function toFirstFault(): void {
  const first = [...document.querySelectorAll("input")].find(({ id }) => faulty.peek().has(id));
  const part = first?.closest("details");
  if (part instanceof HTMLDetailsElement) part.open = true;
  first?.focus();
}
