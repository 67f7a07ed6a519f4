import type { GlassFile } from "@lapline/contract";
import { tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { GlassField, PartProblem } from "./GlassField";
import type { GlassForm } from "./GlassForm";
import { MaterialChoice } from "./MaterialChoice";

type Patch = NonNullable<GlassFile["patches"]>[number];

const PLACES = ["measured", "tail", "deck", "nose", "fins", "strip"] as const;

/** Patches over the full layers: a part of the board, or an extent along it. */
export function PatchFields({ form }: { readonly form: GlassForm }) {
  const t = tell(useSettings().reader);
  const { file, known, edit } = form;
  const patches = file.glass?.patches ?? [];
  const first: Patch = { face: "deck", cloth: known.cloths[0]?.id ?? "", over: "tail" };
  return (
    <>
      {patches.map((patch, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a patch is known by its place
        <OnePatch key={i} form={form} patch={patch} index={i} />
      ))}
      <p className="form-acts">
        <button
          type="button"
          className="plain"
          onClick={() => edit(["glass", "patches"], [...patches, first])}
        >{t`add a patch`}</button>
      </p>
    </>
  );
}

function OnePatch({ form, patch, index }: { form: GlassForm; patch: Patch; index: number }) {
  const t = tell(useSettings().reader);
  const { known, edit } = form;
  const at = ["glass", "patches", index];
  const toPlace = (place: (typeof PLACES)[number]) => {
    const { over: _, fromTail: _from, to: _to, ...rest } = patch;
    edit(at, place === "measured" ? { ...rest, fromTail: "", to: "" } : { ...rest, over: place });
  };
  return (
    <fieldset className="fin">
      <legend>{t`Patch ${index + 1}`}</legend>
      <PartProblem form={form} path={at} />
      <div className="fields">
        <Choice
          label={t`on the`}
          value={patch.face}
          choices={["deck", "bottom"]}
          choose={(face) => edit([...at, "face"], face)}
        />
        <MaterialChoice
          label={t`cloth`}
          value={patch.cloth}
          from={known.cloths}
          choose={(id) => edit([...at, "cloth"], id ?? "")}
        />
        <Choice
          label={t`lies`}
          value={patch.over ?? "measured"}
          choices={PLACES}
          names={{
            measured: t`where measured`,
            tail: t`over the tail`,
            deck: t`under both feet`,
            nose: t`over the nose`,
            fins: t`under the fins`,
            strip: t`from end to end`,
          }}
          choose={toPlace}
        />
        {patch.over === undefined && (
          <>
            <GlassField
              form={form}
              label={t`begins, from the tail`}
              path={[...at, "fromTail"]}
              value={patch.fromTail}
            />
            <GlassField form={form} label={t`ends, from the tail`} path={[...at, "to"]} value={patch.to} />
          </>
        )}
        <GlassField
          form={form}
          label={t`width, if not the board's`}
          path={[...at, "width"]}
          value={patch.width}
        />
        <GlassField
          form={form}
          label={t`warp turned by`}
          path={[...at, "angle"]}
          value={patch.angle}
          dimension="angle"
        />
      </div>
      <button type="button" className="plain" onClick={() => edit(at, undefined)}>
        {t`remove`}
        <span className="unseen"> {t`patch ${index + 1}`}</span>
      </button>
    </fieldset>
  );
}
