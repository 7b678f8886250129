import { useSignal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { ask, firstPairs, stale, stopPlanning, work } from "../state/plan-store.ts";
import { fill, WORDS } from "../words.ts";
import { Button } from "./button.tsx";

const QUIET_MS = 400;

/** What is being worked out, once it takes longer than a moment, and how to stop it. */
export function Working() {
  const now = work.value;
  return (
    <>
      {stale.value ? <p class="stale note">{WORDS.planning.stale}</p> : null}
      {now.state === "working" ? <Running proving={now.proving} /> : null}
      {now.state === "stopped" ? <Stopped /> : null}
      <Preliminary />
    </>
  );
}

/** For how many there are pairs of trees already, where no plan is shown yet: at once, and no verdict. */
function Preliminary() {
  const found = firstPairs.value;
  if (found === undefined || stale.value) return null;
  const { pairs, asked } = found;
  return (
    <p class="stale note" role="status">
      {fill(WORDS.planning.preliminary, { pairs: Math.min(pairs.length, asked), asked })}
    </p>
  );
}

function Stopped() {
  return (
    <div class="working" role="status">
      <p>{WORDS.planning.stopped}</p>
      <Button onPress={ask}>{WORDS.planning.again}</Button>
    </div>
  );
}

function Running({ proving }: { readonly proving: boolean }) {
  const shown = useSignal(false);
  useEffect(() => {
    const timer = setTimeout(() => (shown.value = true), QUIET_MS);
    return () => clearTimeout(timer);
  }, []);
  if (!shown.value) return null;
  return (
    <div class="working" role="status">
      <p>{proving ? WORDS.planning.proving : WORDS.planning.working}</p>
      <svg class="run" viewBox="0 0 360 40" aria-hidden="true">
        <path class="run-line" d="M6 8Q180 52 354 8" />
        <path class="run-post" d="M4 2V34M356 2V34" />
        <circle class="run-bead" cx="16" cy="14" r="9" />
      </svg>
      <Button onPress={stopPlanning}>{WORDS.planning.stop}</Button>
    </div>
  );
}
