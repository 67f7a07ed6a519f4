import { problemAt } from "../board/problemAt";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import { Said } from "../shared/Said";
import type { GlassForm } from "./GlassForm";

interface GlassFieldProps {
  readonly form: GlassForm;
  readonly label: string;
  /** From the top of the board file. */
  readonly path: FieldPath;
  readonly value: string | undefined;
  readonly dimension?: "length" | "angle" | "mass";
}

/** A quantity of blank, glass or materials with its slip beneath it; left empty it is not in the file. */
export function GlassField({ form, label, path, value, dimension = "length" }: GlassFieldProps) {
  return (
    <QuantityField
      label={label}
      value={value}
      dimension={dimension}
      problem={problemAt(form.problems, path)}
      onType={(text) => form.edit(path, text.trim() === "" ? undefined : text)}
    />
  );
}

/** What is wrong with a part of the form that has no field of its own to say it. */
export function PartProblem({ form, path }: { readonly form: GlassForm; readonly path: FieldPath }) {
  const problem = problemAt(form.problems, path);
  return problem === undefined ? null : (
    <p className="field-problem">
      <Said says={problem} />
    </p>
  );
}
