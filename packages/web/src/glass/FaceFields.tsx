import { tell } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { GlassField, PartProblem } from "./GlassField";
import type { GlassForm } from "./GlassForm";
import { MaterialChoice } from "./MaterialChoice";

interface FaceFieldsProps {
  readonly form: GlassForm;
  readonly face: "bottom" | "deck";
}

/** The layers of one face, innermost first, and how far they lap. */
export function FaceFields({ form, face }: FaceFieldsProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { file, known, edit } = form;
  const input = file.glass?.[face];
  const layers = input?.layers ?? [];
  const at = ["glass", face];
  const setLayers = (next: readonly string[], laps = input?.laps) =>
    edit(at, { ...input, layers: next, ...(laps === undefined ? {} : { laps }) });
  const remove = (i: number) =>
    setLayers(
      layers.filter((_, k) => k !== i),
      input?.laps?.filter((_, k) => k !== i),
    );
  const add = () => {
    const next = layers.at(-1) ?? known.cloths[0]?.id ?? "";
    setLayers([...layers, next], input?.laps && [...input.laps, input.laps.at(-1) ?? ""]);
  };
  return (
    <fieldset className="fin">
      <legend>{face === "deck" ? t`Deck's cloth` : t`Bottom's cloth`}</legend>
      <PartProblem form={form} path={at} />
      <PartProblem form={form} path={[...at, "layers"]} />
      <PartProblem form={form} path={[...at, "laps"]} />
      <div className="fields">
        {layers.map((cloth, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a layer is known by its place
          <div key={i} className="layer">
            <MaterialChoice
              label={i === 0 ? t`layer ${1}, on the foam` : t`layer ${i + 1}`}
              value={cloth}
              from={known.cloths}
              choose={(id) => edit([...at, "layers", i], id ?? "")}
            />
            {input?.laps !== undefined && (
              <GlassField
                form={form}
                label={t`lap of layer ${i + 1}`}
                path={[...at, "laps", i]}
                value={input.laps[i]}
              />
            )}
            <button type="button" className="plain" onClick={() => remove(i)}>
              {t`remove`}
              <span className="unseen"> {t`layer ${i + 1}`}</span>
            </button>
          </div>
        ))}
        {input?.laps === undefined && (
          <GlassField form={form} label={t`lap`} path={[...at, "lap"]} value={input?.lap} />
        )}
      </div>
      <p className="form-acts">
        <button type="button" className="plain" onClick={add}>{t`add a layer`}</button>
        {layers.length > 1 && (
          <button
            type="button"
            className="plain"
            onClick={() =>
              edit(
                [...at, "laps"],
                input?.laps === undefined ? layers.map(() => input?.lap ?? "50 mm") : undefined,
              )
            }
          >
            {input?.laps === undefined ? t`a lap for each layer` : t`one lap for all`}
          </button>
        )}
      </p>
    </fieldset>
  );
}
