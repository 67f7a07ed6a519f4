import { tell } from "@lapline/present";
import { useState } from "react";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { PartProblem } from "./GlassField";
import type { GlassForm } from "./GlassForm";
import { OwnFieldView } from "./OwnFieldView";
import { ownId } from "./ownId";
import { GEL_FIELDS, RESIN_FIELDS, RESIN_KINDS, RESIN_STARTS, resinKindNames } from "./ownResins";
import { TypedField } from "./TypedField";

type Resin = NonNullable<NonNullable<GlassForm["file"]["materials"]>["resins"]>[string];

/** Resins by a name of the builder's own, as their data sheet or the shop's own cups give them. */
export function OwnResins({ form }: { readonly form: GlassForm }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const [typed, setTyped] = useState("");
  const resins = form.file.materials?.resins ?? {};
  const id = ownId(typed);
  const begin = () => {
    form.edit(["materials", "resins", id], RESIN_STARTS.peroxide);
    setTyped("");
  };
  return (
    <>
      {Object.entries(resins).map(([each, resin]) => (
        <OwnResin key={each} form={form} id={each} resin={resin} />
      ))}
      <div className="form-acts">
        <TypedField label={t`a resin of your own, by a short name`} value={typed} onType={setTyped} />
        <button
          type="button"
          className="plain"
          disabled={id === "" || Object.hasOwn(resins, id)}
          onClick={begin}
        >{t`add it`}</button>
      </div>
    </>
  );
}

function OwnResin({
  form,
  id,
  resin,
}: {
  readonly form: GlassForm;
  readonly id: string;
  readonly resin: Resin;
}) {
  const { reader } = useSettings();
  const t = tell(reader);
  const at = ["materials", "resins", id];
  const fields = RESIN_FIELDS[resin.kind] ?? [];
  return (
    <fieldset className="fin">
      <legend>{id}</legend>
      <p className="quiet">{t`From its data sheet; what is left empty is taken from the usual resin of its kind, and said. Then choose it as the resin above.`}</p>
      <PartProblem form={form} path={at} />
      <div className="fields">
        <Choice
          label={t`kind of resin`}
          value={resin.kind}
          choices={RESIN_KINDS}
          names={resinKindNames(t)}
          choose={(kind) => form.edit(at, { ...RESIN_STARTS[kind], ...nameOf(resin) })}
        />
        {fields.map((field) => (
          <OwnFieldView key={field.name} form={form} at={at} field={field} />
        ))}
      </div>
      {resin.kind === "peroxide" && (
        <GelLines form={form} at={[...at, "gel"]} count={resin.gel?.length ?? 0} />
      )}
      <button type="button" className="plain" onClick={() => form.edit(at, undefined)}>
        {t`remove`}
        <span className="unseen"> {id}</span>
      </button>
    </fieldset>
  );
}

const nameOf = ({ name }: Resin) => (name === undefined ? {} : { name });

interface GelLinesProps {
  readonly form: GlassForm;
  readonly at: readonly string[];
  readonly count: number;
}

/** Each line of the sheet's gel table, or cup timed in the shop. */
function GelLines({ form, at, count }: GelLinesProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  return (
    <>
      <PartProblem form={form} path={at} />
      {Array.from({ length: count }, (_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line of the table is known by its place
        <fieldset key={i} className="fin">
          <legend>{t`gel time ${i + 1}`}</legend>
          <div className="fields">
            {GEL_FIELDS.map((field) => (
              <OwnFieldView key={field.name} form={form} at={[...at, i]} field={field} />
            ))}
          </div>
          {count > 1 && (
            <button type="button" className="plain" onClick={() => form.edit([...at, i], undefined)}>
              {t`remove`}
              <span className="unseen"> {t`gel time ${i + 1}`}</span>
            </button>
          )}
        </fieldset>
      ))}
      <button
        type="button"
        className="plain"
        onClick={() => form.edit([...at, count], { temperature: "", dose: "", gels: "" })}
      >{t`add a gel time`}</button>
    </>
  );
}
