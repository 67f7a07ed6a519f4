import { problemAt } from "../board/problemAt";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { PartProblem } from "./GlassField";
import type { GlassForm } from "./GlassForm";
import { MaterialChoice } from "./MaterialChoice";
import { NumberField } from "./NumberField";
import { YesNo } from "./YesNo";

/** What holds for the whole lay-up: resin, laps, cutting and finish. */
export function ScheduleFields({ form }: { readonly form: GlassForm }) {
  const t = useTell();
  const { file, known, edit } = form;
  const { glass = {} } = file;
  const { resin } = glass;
  const laminate = typeof resin === "string" ? resin : resin?.laminate;
  return (
    <fieldset className="fin">
      <legend>{t`The whole lay-up`}</legend>
      <PartProblem form={form} path={["glass"]} />
      <PartProblem form={form} path={["glass", "resin"]} />
      <div className="fields">
        <MaterialChoice
          label={t`resin`}
          value={laminate}
          from={known.resins}
          choose={(id) =>
            edit(["glass", "resin"], typeof resin === "object" ? { ...resin, laminate: id } : id)
          }
        />
        <MaterialChoice
          label={t`resin around the boxes`}
          value={glass.boxResin}
          from={known.resins}
          none={t`as the laminate`}
          choose={(id) => edit(["glass", "boxResin"], id)}
        />
        <Choice
          label={t`laps`}
          value={glass.lapKind ?? "free"}
          choices={["free", "cut"]}
          names={{ free: t`free`, cut: t`cut along a tape` }}
          choose={(value) => edit(["glass", "lapKind"], value)}
        />
        <Choice
          label={t`cloth cut`}
          value={glass.cutting ?? "rolled"}
          choices={["rolled", "pattern"]}
          names={{ rolled: t`rolled out, on the board`, pattern: t`to the flat pattern` }}
          choose={(value) => edit(["glass", "cutting"], value)}
        />
        <Choice
          label={t`finish`}
          value={glass.finish ?? "sanded"}
          choices={["sanded", "wet-sanded", "gloss"]}
          names={{ sanded: t`sanded`, "wet-sanded": t`wet-sanded`, gloss: t`gloss coat` }}
          choose={(value) => edit(["glass", "finish"], value)}
        />
        <NumberField
          label={t`resin to glass, by weight`}
          value={glass.resinRatio}
          problem={problemAt(form.problems, ["glass", "resinRatio"])}
          onType={(value) => edit(["glass", "resinRatio"], value)}
        />
        <YesNo
          label={t`logos under the deck's cloth`}
          value={glass.logos}
          unsaid={t`not said`}
          choose={(value) => edit(["glass", "logos"], value)}
        />
        <YesNo
          label={t`pinline`}
          value={glass.pinline}
          unsaid={t`not said`}
          choose={(value) => edit(["glass", "pinline"], value)}
        />
      </div>
    </fieldset>
  );
}
