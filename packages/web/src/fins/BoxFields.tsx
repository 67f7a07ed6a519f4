import type { FinFile } from "@lapline/contract";
import { Choice } from "../shared/Choice";
import { FinsField } from "./FinsField";
import type { FinsForm } from "./FinsForm";

interface BoxFieldsProps {
  readonly form: FinsForm;
  readonly index: number;
  readonly fin: FinFile;
}

const BOX = [
  { field: "length", label: "box, long" },
  { field: "width", label: "box, wide" },
  { field: "depth", label: "box, deep" },
] as const;
const FOILS = ["not given", "flat-inside", "symmetric"] as const;

/** The fin's own shape and its box, described by numbers. */
export function BoxFields({ form, index, fin }: BoxFieldsProps) {
  const { edit } = form;
  const at = ["set", index];
  const { box, foil } = fin;
  return (
    <details className="box">
      <summary>Box and fin</summary>
      <div className="fields">
        {box !== undefined && (
          <>
            {BOX.map(({ field, label }) => (
              <FinsField
                key={field}
                form={form}
                label={label}
                path={[...at, "box", field]}
                value={box[field]}
              />
            ))}
            <FinsField
              form={form}
              label="box reaches behind the mark"
              path={[...at, "box", "behindTrailing"]}
              value={box.behindTrailing}
              optional
            />
          </>
        )}
        <FinsField form={form} label="fin, deep" path={[...at, "depth"]} value={fin.depth} optional />
        <FinsField
          form={form}
          label="sweep"
          path={[...at, "sweep"]}
          value={fin.sweep}
          dimension="angle"
          optional
        />
        <Choice
          label="foil"
          value={foil?.kind ?? "not given"}
          choices={FOILS}
          choose={(kind) =>
            edit(["fins", ...at, "foil"], kind === "not given" ? undefined : { ...foil, kind })
          }
        />
      </div>
      <button
        type="button"
        className="plain"
        onClick={() =>
          edit(["fins", ...at, "box"], box === undefined ? { length: "", width: "", depth: "" } : undefined)
        }
      >
        {box === undefined ? "give it a box" : "take the box away"}
      </button>
    </details>
  );
}
