import type { GlassFile } from "@lapline/contract";
import { problemAt } from "../board/problemAt";
import { useTell } from "../settings/useTell";
import type { GlassForm } from "./GlassForm";
import { MaterialChoice } from "./MaterialChoice";
import { TypedField } from "./TypedField";

const COATS = ["laminate", "fill", "gloss"] as const;

/** Another resin for a coat, fillers, and tint or pigment in one. */
export function SeldomFields({ form }: { readonly form: GlassForm }) {
  const t = useTell();
  const { file, known, edit } = form;
  const { resin, tint, fillers } = file.glass ?? {};
  const byCoat = typeof resin === "object" ? resin : resin === undefined ? {} : { laminate: resin };
  const setResin = (coat: "fill" | "gloss", id: string | undefined) => {
    const { [coat]: _, ...rest } = byCoat;
    edit(["glass", "resin"], id === undefined ? simplest(rest) : { ...rest, [coat]: id });
  };
  const tintNames = {
    laminate: t`tint in the laminate`,
    fill: t`tint in the fill coat`,
    gloss: t`tint in the gloss coat`,
  };
  return (
    <div className="fields">
      <MaterialChoice
        label={t`resin of the fill coat`}
        value={byCoat.fill}
        from={known.resins}
        none={t`as the laminate`}
        choose={(id) => setResin("fill", id)}
      />
      <MaterialChoice
        label={t`resin of the gloss coat`}
        value={byCoat.gloss}
        from={known.resins}
        none={t`as the laminate`}
        choose={(id) => setResin("gloss", id)}
      />
      <MaterialChoice
        label={t`filler around boxes and plug`}
        value={fillers?.box}
        from={known.fillers}
        none={t`none, neat resin`}
        choose={(id) => edit(["glass", "fillers", "box"], id)}
      />
      <MaterialChoice
        label={t`filler in a seal coat`}
        value={fillers?.seal}
        from={known.fillers}
        none={t`none counted`}
        choose={(id) => edit(["glass", "fillers", "seal"], id)}
      />
      {known.tints.length > 0 && (
        <MaterialChoice
          label={t`tint`}
          value={tint?.of}
          from={known.tints}
          none={t`not said`}
          choose={(id) => edit(["glass", "tint", "of"], id)}
        />
      )}
      {COATS.map((coat) => (
        <TypedField
          key={coat}
          label={tintNames[coat]}
          value={tint?.[coat]}
          problem={problemAt(form.problems, ["glass", "tint", coat])}
          onType={(text) => edit(["glass", "tint", coat], text.trim() === "" ? undefined : text)}
        />
      ))}
    </div>
  );
}

type Resin = GlassFile["resin"];

/** One resin for all coats is written as its id alone. */
function simplest(resin: Exclude<Resin, string | undefined>): Resin {
  const { laminate, ...rest } = resin;
  return laminate !== undefined && Object.keys(rest).length === 0 ? laminate : resin;
}
