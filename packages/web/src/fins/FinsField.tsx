import type { Phrase } from "@lapline/engine";
import { problemAt as problemIn } from "../board/problemAt";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import type { FinsForm } from "./FinsForm";

interface FinsFieldProps {
  readonly form: FinsForm;
  readonly label: string;
  /** Within `fins`. */
  readonly path: FieldPath;
  readonly value: string | undefined;
  readonly dimension?: "length" | "angle";
  /** Left empty it is not in the file, and the plan says what it takes instead. */
  readonly optional?: boolean;
}

/** A quantity of the fins, with its slip beneath it. */
export function FinsField({
  form,
  label,
  path,
  value,
  dimension = "length",
  optional = false,
}: FinsFieldProps) {
  const at = ["fins", ...path];
  return (
    <QuantityField
      label={label}
      value={value}
      dimension={dimension}
      problem={problemAt(form, path)}
      onType={(text) => form.edit(at, optional && text.trim() === "" ? undefined : text)}
    />
  );
}

/** What is wrong with a field of the fins. */
export function problemAt({ problems }: Pick<FinsForm, "problems">, path: FieldPath): Phrase | undefined {
  return problemIn(problems, ["fins", ...path]);
}
