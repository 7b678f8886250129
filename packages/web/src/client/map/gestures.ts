import { panned, zoomed, type FromMiddle, type View } from "./view.ts";

export interface GestureHandlers {
  readonly moving: (view: View) => void;
  readonly rest: (view: View) => void;
  readonly pick: (refs: readonly string[], at: FromMiddle) => void;
}

const REST_MS = 140;
const STILL_PX = 8;
const WHEEL_PER_PX = 0.0016;

/** Turns fingers, mouse and wheel on an element into views. */
export class Gestures {
  readonly #element: HTMLElement;
  readonly #handlers: GestureHandlers;
  readonly #fingers = new Map<number, FromMiddle>();
  readonly #listening = new AbortController();
  #view: View;
  #travelled = 0;
  #several = false;
  #restTimer: ReturnType<typeof setTimeout> | undefined;

  constructor(element: HTMLElement, start: View, handlers: GestureHandlers) {
    this.#element = element;
    this.#view = start;
    this.#handlers = handlers;
    const { signal } = this.#listening;
    element.addEventListener("pointerdown", (event) => this.#down(event), { signal });
    element.addEventListener("pointermove", (event) => this.#move(event), { signal });
    element.addEventListener("pointerup", (event) => this.#up(event, true), { signal });
    element.addEventListener("pointercancel", (event) => this.#up(event, false), { signal });
    element.addEventListener("wheel", (event) => this.#wheel(event), { signal, passive: false });
  }

  /** The view under way. */
  get view(): View {
    return this.#view;
  }

  /** A new view from elsewhere, a button or a key; fingers on the map go before it. */
  show(view: View): void {
    if (this.#fingers.size === 0) this.#view = view;
  }

  end(): void {
    clearTimeout(this.#restTimer);
    this.#listening.abort();
  }

  #down(event: PointerEvent): void {
    if (event.button !== 0) return;
    this.#element.setPointerCapture(event.pointerId);
    clearTimeout(this.#restTimer);
    this.#several = this.#fingers.size > 0;
    if (!this.#several) this.#travelled = 0;
    this.#fingers.set(event.pointerId, this.#fromMiddle(event));
  }

  #move(event: PointerEvent): void {
    const before = this.#fingers.get(event.pointerId);
    if (before === undefined) return;
    const now = this.#fromMiddle(event);
    if (this.#travelled < STILL_PX && !this.#several) {
      // The finger rests until it has clearly left its place; then the ground follows from there.
      this.#travelled = distance(before, now);
      if (this.#travelled < STILL_PX) return;
    }
    const other = [...this.#fingers].find(([id]) => id !== event.pointerId)?.[1];
    this.#fingers.set(event.pointerId, now);
    this.#view =
      other === undefined
        ? panned(this.#view, [now[0] - before[0], now[1] - before[1]])
        : pinched(this.#view, [before, other], [now, other]);
    this.#handlers.moving(this.#view);
  }

  #up(event: PointerEvent, counts: boolean): void {
    if (!this.#fingers.delete(event.pointerId) || this.#fingers.size > 0) return;
    if (counts && this.#travelled < STILL_PX && !this.#several) {
      this.#handlers.pick(refsAt(event.clientX, event.clientY, this.#element), this.#fromMiddle(event));
    } else this.#rest(0);
  }

  #wheel(event: WheelEvent): void {
    event.preventDefault();
    const pixels = event.deltaMode === 1 ? event.deltaY * 16 : event.deltaY;
    this.#view = zoomed(this.#view, Math.exp(-pixels * WHEEL_PER_PX), this.#fromMiddle(event));
    this.#handlers.moving(this.#view);
    this.#rest(REST_MS);
  }

  #rest(afterMs: number): void {
    clearTimeout(this.#restTimer);
    this.#restTimer = setTimeout(() => this.#handlers.rest(this.#view), afterMs);
  }

  #fromMiddle({ clientX, clientY }: MouseEvent): FromMiddle {
    const { left, top, width, height } = this.#element.getBoundingClientRect();
    return [clientX - left - width / 2, clientY - top - height / 2];
  }
}

/** The view after two fingers went from one pair of places to another. */
export function pinched(
  view: View,
  before: readonly [FromMiddle, FromMiddle],
  now: readonly [FromMiddle, FromMiddle],
): View {
  const apart = distance(...before);
  const [was, is] = [middle(...before), middle(...now)];
  const moved = panned(view, [is[0] - was[0], is[1] - was[1]]);
  return apart < 1 ? moved : zoomed(moved, distance(...now) / apart, is);
}

function refsAt(x: number, y: number, within: HTMLElement): readonly string[] {
  const refs = document
    .elementsFromPoint(x, y)
    .filter((element) => within.contains(element))
    .flatMap((element) => element.closest("[data-ref]")?.getAttribute("data-ref") ?? []);
  return [...new Set(refs)];
}

function distance(a: FromMiddle, b: FromMiddle): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function middle(a: FromMiddle, b: FromMiddle): FromMiddle {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
