import { tell } from "@lapline/present";
import { useState } from "react";
import { useSettings } from "../settings/Settings";
import { PartProblem } from "./GlassField";
import type { GlassForm } from "./GlassForm";
import { OwnFieldView } from "./OwnFieldView";
import { OwnResins } from "./OwnResins";
import { ownId } from "./ownId";
import { OWN_KINDS, type OwnKind } from "./ownKinds";
import { TypedField } from "./TypedField";

/** Resins, cloths, foams and woods that the list does not have: by a name of the builder's own, as their sheet gives them. */
export function OwnMaterials({ form }: { readonly form: GlassForm }) {
  return (
    <>
      <OwnResins form={form} />
      {(Object.keys(OWN_KINDS) as OwnKind[]).map((kind) => (
        <OwnOfKind key={kind} form={form} kind={kind} />
      ))}
    </>
  );
}

function OwnOfKind({ form, kind }: { form: GlassForm; kind: OwnKind }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const [id, setId] = useState("");
  const { file, edit } = form;
  const { add, start } = OWN_KINDS[kind];
  const ids = Object.keys(file.materials?.[kind] ?? {});
  const name = ownId(id);
  const begin = () => {
    edit(["materials", kind, name], start);
    setId("");
  };
  return (
    <>
      {ids.map((each) => (
        <OwnRecord key={each} form={form} kind={kind} id={each} />
      ))}
      <div className="form-acts">
        <TypedField label={add(t)} value={id} onType={setId} />
        <button
          type="button"
          className="plain"
          disabled={name === "" || ids.includes(name)}
          onClick={begin}
        >{t`add it`}</button>
      </div>
    </>
  );
}

function OwnRecord({ form, kind, id }: { form: GlassForm; kind: OwnKind; id: string }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const at = ["materials", kind, id];
  return (
    <fieldset className="fin">
      <legend>{id}</legend>
      <PartProblem form={form} path={at} />
      <div className="fields">
        {OWN_KINDS[kind].fields.map((field) => (
          <OwnFieldView key={field.name} form={form} at={at} field={field} />
        ))}
      </div>
      <button type="button" className="plain" onClick={() => form.edit(at, undefined)}>
        {t`remove`}
        <span className="unseen"> {id}</span>
      </button>
    </fieldset>
  );
}
