import type { KitDocument } from "@nightspan/edge";
import type { DocumentPath } from "../state/document-path.ts";
import {
  ChoiceField,
  FieldList,
  FlagField,
  ListField,
  NumberField,
  PercentField,
  TextField,
} from "../ui/field.tsx";
import { WORDS } from "../words.ts";
import { KIT_FIELDS, type KitField } from "./kit-field-table.ts";

interface KitFieldsProps {
  readonly item: KitDocument;
  readonly index: number;
}

/** All that is known of one line of the store. */
export function KitFields({ item, index }: KitFieldsProps) {
  const path: DocumentPath = ["kit", index];
  return (
    <FieldList>
      <NumberField path={[...path, "count"]} label={WORDS.kit.count} hint="1" />
      {KIT_FIELDS[item.kind].map((field) => (
        <OneField key={field.name} field={field} path={[...path, field.name]} />
      ))}
      <NumberField path={[...path, "mass_kg"]} label={WORDS.kit.mass} unit="kg" />
      <ListField path={[...path, "numbers"]} label={WORDS.kit.numbers} note={WORDS.kit.numbersNote} />
      <ChoiceField
        path={[...path, "state"]}
        label={WORDS.kit.state}
        choices={(["in-use", "quarantined", "retired"] as const).map((state) => [state, WORDS.kit[state]])}
        silentValue="in-use"
      />
    </FieldList>
  );
}

function OneField({ field, path }: { readonly field: KitField; readonly path: DocumentPath }) {
  const label = WORDS.kit.fields[field.name] ?? field.name;
  if (field.is === "number") return <NumberField path={path} label={label} unit={field.unit} />;
  if (field.is === "share") return <PercentField path={path} label={label} />;
  if (field.is === "flag") return <FlagField path={path} label={label} silent={field.name === "fits_net"} />;
  if (field.is === "text") return <TextField path={path} label={label} />;
  return (
    <ChoiceField
      path={path}
      label={label}
      choices={field.of.map((choice) => [choice, WORDS.kit.choices[choice] ?? choice])}
    />
  );
}
