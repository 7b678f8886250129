const REST_MS = 400;
const FINGERTIP_PX = 24;

interface Press {
  readonly at: number;
  readonly target: EventTarget | null;
  readonly x: number;
  readonly y: number;
}

let last: Press = { at: -Infinity, target: null, x: 0, y: 0 };

/**
 * A press that counts once in 400 ms at one place, so that a wet fingertip does not press twice,
 * nor press what the first press put under it.
 */
export function once(act: () => void): (event: MouseEvent) => void {
  return (event) => {
    const press = { at: event.timeStamp, target: event.currentTarget, x: event.clientX, y: event.clientY };
    if (isEcho(press, last, event.detail > 0)) return;
    last = press;
    act();
  };
}

/** Whether a press is the echo of the one before. A press by key has no place, only a target. */
export function isEcho(press: Press, before: Press, byPointer: boolean): boolean {
  if (press.at - before.at >= REST_MS) return false;
  if (press.target === before.target) return true;
  return byPointer && Math.hypot(press.x - before.x, press.y - before.y) < FINGERTIP_PX;
}
