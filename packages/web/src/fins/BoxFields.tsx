import type { FinFile } from "@lapline/contract";
import { tellText } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
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
  const { reader } = useSettings();
  const t = useTell();
  const { edit } = form;
  const at = ["set", index];
  const { box, foil } = fin;
  return (
    <details className="box">
      <summary>{t`Box and fin`}</summary>
      <div className="fields">
        {box !== undefined && (
          <>
            {BOX.map(({ field, label }) => (
              <FinsField
                key={field}
                form={form}
                label={tellText(label, reader)}
                path={[...at, "box", field]}
                value={box[field]}
              />
            ))}
            <FinsField
              form={form}
              label={t`box reaches behind the mark`}
              path={[...at, "box", "behindTrailing"]}
              value={box.behindTrailing}
              optional
            />
          </>
        )}
        <FinsField form={form} label={t`fin, deep`} path={[...at, "depth"]} value={fin.depth} optional />
        <FinsField
          form={form}
          label={t`sweep`}
          path={[...at, "sweep"]}
          value={fin.sweep}
          dimension="angle"
          optional
        />
        <Choice
          label={t`foil`}
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
        {box === undefined ? t`give it a box` : t`take the box away`}
      </button>
    </details>
  );
}
