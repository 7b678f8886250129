import type { InspectionAction, Refusal } from "@nightspan/core";
import type { KitDocument } from "@nightspan/edge";
import { useSignal } from "@preact/signals";
import { useId } from "preact/hooks";
import { opened } from "../state/camp-store.ts";
import { settings } from "../state/settings.ts";
import { sayDay, today } from "../state/today.ts";
import { Button } from "../ui/button.tsx";
import { FaultNote } from "../ui/fault-note.tsx";
import { FieldFrame } from "../ui/field-frame.tsx";
import { LookerField } from "../ui/looker-field.tsx";
import { Name } from "../ui/name.tsx";
import { fill, WORDS } from "../words.ts";
import { inspect, inspectionsOf } from "./inspections.ts";

interface InspectionPartProps {
  readonly item: KitDocument;
  readonly index: number;
}

/** One look at a line or at one numbered piece: what was found, what follows, by whom; and all looks before it. */
export function InspectionPart({ item, index }: InspectionPartProps) {
  const id = useId();
  const finding = useSignal("");
  const number = useSignal("");
  const refusals = useSignal<readonly Refusal[]>([]);
  const looker = settings.value.looker.trim();
  const off = looker === "" ? WORDS.kit.nameFirst : undefined;
  const act = (action: InspectionAction) => (): void => {
    refusals.value = inspect(index, item, {
      by: looker,
      on: opened.peek()?.camp.date ?? today(),
      finding: finding.value.trim() === "" ? WORDS.kit.found[action] : finding.value.trim(),
      action,
      ...(number.value === "" ? {} : { number: number.value }),
    });
    if (refusals.value.length === 0) finding.value = "";
  };
  return (
    <section class="inspection">
      <h3>{WORDS.kit.inspection}</h3>
      <History item={item} />
      <PieceChoice numbers={item.numbers ?? []} now={number.value} onChoose={(one) => (number.value = one)} />
      <FieldFrame id={id} label={WORDS.kit.finding}>
        <input
          id={id}
          class="input"
          dir="auto"
          maxLength={200}
          autocomplete="off"
          value={finding.value}
          onInput={(event) => (finding.value = event.currentTarget.value)}
        />
      </FieldFrame>
      <LookerField />
      <div class="look-buttons">
        {(["pass", "quarantine", "retire"] as const).map((action) => (
          <Button
            key={action}
            {...(action === "pass" ? { kind: "action" as const } : {})}
            offBecause={off}
            onPress={act(action)}
          >
            {WORDS.kit.actions[action]}
          </Button>
        ))}
      </div>
      {refusals.value.length === 0 ? null : <FaultNote id={`${id}-fault`} refusals={refusals.value} at="" />}
      {off === undefined ? null : <p class="note">{off}</p>}
    </section>
  );
}

interface PieceChoiceProps {
  readonly numbers: readonly string[];
  readonly now: string;
  readonly onChoose: (number: string) => void;
}

/** Which of the numbered pieces is meant, where the pieces bear numbers. */
function PieceChoice({ numbers, now, onChoose }: PieceChoiceProps) {
  const id = useId();
  if (numbers.length === 0) return null;
  return (
    <FieldFrame id={id} label={WORDS.kit.piece}>
      <select id={id} class="input" value={now} onChange={(event) => onChoose(event.currentTarget.value)}>
        <option value="">{WORDS.kit.wholeLine}</option>
        {numbers.map((one) => (
          <option key={one} value={one}>
            {one}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}

/** The last look first. */
function History({ item }: { readonly item: KitDocument }) {
  const log = [...inspectionsOf(item)].reverse();
  if (log.length === 0) return <p class="soft">{WORDS.kit.never}</p>;
  return (
    <ol class="log">
      {log.map((entry, place) => (
        <li key={log.length - place} class={`log-line log-${entry.action}`}>
          <b>{WORDS.kit.acted[entry.action]}</b>
          <span dir="auto">
            {entry.number === undefined ? "" : fill(WORDS.kit.numberIs, { number: entry.number })}
            {entry.finding}
          </span>
          <span class="note soft">
            <Name>{entry.by}</Name>, {sayDay(entry.on)}
          </span>
        </li>
      ))}
    </ol>
  );
}
