import type { ComponentChildren } from "preact";

interface FieldFrameProps {
  readonly id: string;
  readonly label: string;
  readonly faulty?: boolean;
  /** A short word on the field, under its name. */
  readonly note?: string | undefined;
  /** What stands below, across the whole width. */
  readonly below?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** One line of a list of fields: the name left, the value right. */
export function FieldFrame({ id, label, faulty = false, note, below, children }: FieldFrameProps) {
  return (
    <div class={faulty ? "field field-faulty" : "field"}>
      <span class="field-name">
        <label for={id}>{label}</label>
        {note === undefined ? null : (
          <span class="note soft field-note" id={noteId(id)}>
            {note}
          </span>
        )}
      </span>
      <span class="field-value">{children}</span>
      {below}
    </div>
  );
}

/** The element that holds the short word on a field. */
export function noteId(id: string): string {
  return `${id}-note`;
}
