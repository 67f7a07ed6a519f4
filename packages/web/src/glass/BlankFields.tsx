import { problemAt } from "../board/problemAt";
import { QuantityField } from "../board/QuantityField";
import { useTell } from "../settings/useTell";
import { GlassField, PartProblem } from "./GlassField";
import type { GlassForm } from "./GlassForm";
import { MaterialChoice } from "./MaterialChoice";
import { YesNo } from "./YesNo";

/** What the blank is made of, what stands in it, and what it weighs. */
export function BlankFields({ form }: { readonly form: GlassForm }) {
  const t = useTell();
  const { file, known, edit } = form;
  const { blank, glass } = file;
  return (
    <fieldset className="fin">
      <legend>{t`Blank`}</legend>
      <PartProblem form={form} path={["blank"]} />
      <PartProblem form={form} path={["blank", "foam"]} />
      <PartProblem form={form} path={["blank", "stringer"]} />
      <div className="fields">
        <MaterialChoice
          label={t`foam`}
          value={blank?.foam}
          from={known.foams}
          choose={(id) => edit(["blank", "foam"], id)}
        />
        <QuantityField
          label={t`stringer, thick`}
          value={blank?.stringer?.thickness}
          problem={problemAt(form.problems, ["blank", "stringer", "thickness"])}
          onType={(text) =>
            edit(
              ["blank", "stringer"],
              text.trim() === "" ? undefined : { ...blank?.stringer, thickness: text },
            )
          }
        />
        {blank?.stringer !== undefined && (
          <MaterialChoice
            label={t`stringer's wood`}
            value={blank.stringer.wood}
            from={known.woods}
            none={t`not said`}
            choose={(id) => edit(["blank", "stringer", "wood"], id)}
          />
        )}
        <GlassField
          form={form}
          label={t`shaped blank weighs`}
          path={["blank", "shapedMass"]}
          value={blank?.shapedMass}
          dimension="mass"
        />
        <YesNo
          label={t`foam sealed first`}
          value={glass?.seal}
          unsaid={t`as its foam is`}
          choose={(value) => edit(["glass", "seal"], value)}
        />
        <YesNo
          label={t`vent`}
          value={blank?.vent}
          unsaid={t`not said`}
          choose={(value) => edit(["blank", "vent"], value)}
        />
      </div>
    </fieldset>
  );
}
