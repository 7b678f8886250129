import type { Outcome, Refusal } from "@nightspan/core";
import type { BadRow } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { fill, WORDS } from "../words.ts";
import { Button } from "./button.tsx";
import { sayGot } from "./fault-note.tsx";
import { FileButton } from "./file-button.tsx";

/** Rows of a list: those that can be used, and those that cannot. */
interface ReadList {
  readonly rows: readonly unknown[];
  readonly bad: readonly BadRow[];
}

interface ListImportProps<L extends ReadList> {
  readonly accept: string;
  readonly title: string;
  readonly note: string;
  /** What came in, with a hole for the count. */
  readonly done: string;
  readonly read: (text: string, fileName: string) => Outcome<L>;
  /** Takes the rows; the refusals where the camp cannot bear them. */
  readonly take: (list: L) => readonly Refusal[];
}

type Import<L> =
  | { readonly state: "none" }
  | { readonly state: "refused"; readonly refusals: readonly Refusal[] }
  | { readonly state: "asking"; readonly list: L }
  | { readonly state: "done"; readonly count: number };

/** Rows from a list. Nothing comes in while a row is bad, until the reader leaves the bad rows out. */
export function ListImport<L extends ReadList>(props: ListImportProps<L>) {
  const { accept, title, note, done, read, take } = props;
  const state = useSignal<Import<L>>({ state: "none" });
  const bringIn = (list: L): void => {
    const refusals = take(list);
    state.value =
      refusals.length > 0 ? { state: "refused", refusals } : { state: "done", count: list.rows.length };
  };
  const open = async (file: File): Promise<void> => {
    const outcome = read(await file.text(), file.name);
    if (!outcome.ok) state.value = { state: "refused", refusals: outcome.refusals };
    else if (outcome.value.bad.length > 0) state.value = { state: "asking", list: outcome.value };
    else bringIn(outcome.value);
  };
  const now = state.value;
  return (
    <section class="import">
      <FileButton accept={accept} size="wide" onFile={(file) => void open(file)}>
        {title}
      </FileButton>
      <p class="note soft">{note}</p>
      {now.state === "done" ? <p role="status">{fill(done, { count: now.count })}</p> : null}
      {now.state === "refused" ? <Refused refusals={now.refusals} /> : null}
      {now.state === "asking" ? (
        <BadRows
          list={now.list}
          onSkip={() => bringIn(now.list)}
          onCancel={() => (state.value = { state: "none" })}
        />
      ) : null}
    </section>
  );
}

/** What stood against a file that was read. */
export function Refused({ refusals }: { readonly refusals: readonly Refusal[] }) {
  return (
    <ul class="faults" role="status">
      {refusals.map((refusal) => (
        <Fault key={`${refusal.field} ${refusal.need}`} place="" refusal={refusal} />
      ))}
    </ul>
  );
}

interface BadRowsProps {
  readonly list: ReadList;
  readonly onSkip: () => void;
  readonly onCancel: () => void;
}

function BadRows({ list: { rows, bad }, onSkip, onCancel }: BadRowsProps) {
  return (
    <div role="status">
      <h4 class="lead">
        {bad.length === 1 ? WORDS.ground.badRow : fill(WORDS.ground.badRows, { count: bad.length })}
      </h4>
      <ul class="faults">
        {bad.flatMap(({ place, refusals }) =>
          refusals.map((refusal) => (
            <Fault key={`${place} ${refusal.field} ${refusal.need}`} place={`${place}, `} refusal={refusal} />
          )),
        )}
      </ul>
      <div class="pair-of-buttons">
        {rows.length === 0 ? null : (
          <Button kind="action" onPress={onSkip}>
            {WORDS.ground.leaveOut}
          </Button>
        )}
        <Button onPress={onCancel}>{WORDS.ground.cancelImport}</Button>
      </div>
    </div>
  );
}

function Fault({ place, refusal }: { readonly place: string; readonly refusal: Refusal }) {
  return (
    <li class="fault-row">
      <b>
        {place}
        {refusal.field}
      </b>
      <span>{sayGot(refusal.got)}</span>
      <span>{fill(WORDS.files.need, { need: refusal.need })}</span>
    </li>
  );
}
