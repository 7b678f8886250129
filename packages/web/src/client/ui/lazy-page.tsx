import { signal } from "@preact/signals";
import type { FunctionComponent } from "preact";
import { describe, showMistake } from "../state/mistake.ts";

export interface LazyPage<P> extends FunctionComponent<P> {
  /** Brings the page's script before it is shown. */
  readonly bring: () => void;
}

/** A page whose script comes when it is first wanted; until then its place stays empty. */
export function lazyPage<P extends object>(load: () => Promise<FunctionComponent<P>>): LazyPage<P> {
  const loaded = signal<FunctionComponent<P> | undefined>(undefined);
  let coming = false;
  const bring = (): void => {
    if (coming) return;
    coming = true;
    load().then(
      (page) => (loaded.value = page),
      (error: unknown) => showMistake(describe(error)),
    );
  };
  const shown: FunctionComponent<P> = (props) => {
    bring();
    const Page = loaded.value;
    return Page === undefined ? <div class="page-coming" /> : <Page {...props} />;
  };
  return Object.assign(shown, { bring });
}
