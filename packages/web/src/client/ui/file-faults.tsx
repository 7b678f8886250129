import { fileFaults } from "../state/open-file.ts";
import { fill, WORDS } from "../words.ts";
import { Dialog } from "./dialog.tsx";
import { sayGot } from "./fault-note.tsx";

/** All faults of a file that cannot be used: where, what was found, what is needed. */
export function FileFaults() {
  const faults = fileFaults.value;
  if (faults === undefined) return null;
  const { name, refusals } = faults;
  const count =
    refusals.length === 1 ? WORDS.files.fault : fill(WORDS.files.faults, { count: refusals.length });
  return (
    <Dialog title={WORDS.files.title} onClose={() => (fileFaults.value = undefined)}>
      <p>
        <bdi>{name}</bdi>: {count}. {WORDS.files.kept}
      </p>
      <ol class="faults">
        {refusals.map((refusal) => (
          <li key={`${refusal.field} ${refusal.need}`} class="fault-row">
            <b>{refusal.field}</b>
            <span>{sayGot(refusal.got)}</span>
            <span>{fill(WORDS.files.need, { need: refusal.need })}</span>
          </li>
        ))}
      </ol>
    </Dialog>
  );
}
