import { tell } from "@lapline/present";
import { problemAt } from "../board/problemAt";
import { fieldAt } from "../board/withField";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import type { GlassForm } from "./GlassForm";
import { NumberField } from "./NumberField";
import type { OwnField } from "./ownKinds";
import { TypedField } from "./TypedField";

interface OwnFieldViewProps {
  readonly form: GlassForm;
  /** Of the record. */
  readonly at: ReadonlyArray<string | number>;
  readonly field: OwnField;
}

/** One field of a record of the builder's own: typed, or one of a few. */
export function OwnFieldView({ form, at, field }: OwnFieldViewProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const path = [...at, ...field.name.split(".")];
  const given = fieldAt(form.file, path);
  const names = field.choices?.(t);
  const label = field.label(t);
  const problem = problemAt(form.problems, path);
  const set = (value: unknown) => setField(form, path, value);
  if (names !== undefined)
    return (
      <Choice
        label={label}
        value={typeof given === "string" ? given : (Object.keys(names)[0] ?? "")}
        choices={Object.keys(names)}
        names={names}
        choose={set}
      />
    );
  if (field.isNumber === true)
    return <NumberField label={label} value={given} problem={problem} onType={set} />;
  return (
    <TypedField
      label={label}
      value={typeof given === "string" ? given : undefined}
      problem={problem}
      onType={(text) => set(text.trim() === "" ? undefined : text)}
    />
  );
}

/** Taken away with the part that it stands in, where that holds nothing else. */
function setField(form: GlassForm, path: ReadonlyArray<string | number>, value: unknown): void {
  const part = path.slice(0, -1);
  const others = Object.keys(fieldAt(form.file, part) ?? {}).filter((name) => name !== path.at(-1));
  form.edit(value === undefined && others.length === 0 ? part : path, value);
}
