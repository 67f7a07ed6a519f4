import type { BoardFile } from "@lapline/contract";
import { mass, type Plan } from "@lapline/engine";
import {
  aheadSentences,
  floatSentences,
  showQuantity,
  tell,
  weighinSentences,
  weightDrawing,
} from "@lapline/present";
import { useCallback } from "react";
import type { FieldPath } from "../board/withField";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Figures } from "../shared/Figures";
import { stageName } from "./stageName";
import { WeighinForm } from "./WeighinForm";

interface WeightViewProps {
  readonly file: BoardFile;
  readonly plan: Plan;
  readonly weight: NonNullable<Plan["weight"]>;
  edit(path: FieldPath, value: unknown): void;
}

/** What the board weighs by part and after each coat, beside the scale, what that says of the coats to come, and what it floats. */
export function WeightView({ file, plan, weight, edit }: WeightViewProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const { weighins } = plan;
  const draw = useCallback((widthMm: number) => weightDrawing(plan, { reader, widthMm }), [plan, reader]);
  const told =
    weighins === null
      ? []
      : [
          ...weighins.entries.map((entry) => weighinSentences(entry, reader).join(" ")),
          ...aheadSentences(weighins, reader),
        ].filter((sentence) => sentence !== "");
  return (
    <>
      <h3>{t`Weight`}</h3>
      <WeightParts weight={weight} />
      <SheetDrawing
        title={t`${plan.name}, weight after each coat`}
        desc={t`The plan's band after each coat and the scale's readings; the figures stand in the table below.`}
        draw={draw}
      />
      <StageTable plan={plan} weight={weight} />
      <h3>{t`Weigh-in`}</h3>
      <WeighinForm file={file} stages={weight.stages} edit={edit} />
      {told.length > 0 && <Sentences sentences={told} />}
      <h3>{t`Float`}</h3>
      <Sentences sentences={floatSentences(weight, reader)} />
    </>
  );
}

function WeightParts({ weight }: { weight: NonNullable<Plan["weight"]> }) {
  const t = tell(useSettings().reader);
  return (
    <Figures
      entries={[
        {
          name: t`finished`,
          of: mass(weight.finishedKg),
          why: "weight.finishedKg",
          note: t`${mass(weight.finishedLowKg)} to ${mass(weight.finishedHighKg)}`,
        },
        { name: t`foam`, of: mass(weight.foamKg), why: "weight.foamKg" },
        { name: t`stringer`, of: mass(weight.stringerKg), why: "weight.stringerKg" },
        { name: t`cloth`, of: mass(weight.clothKg), why: "weight.clothKg" },
        { name: t`resin, cured`, of: mass(weight.resinKg), why: "weight.resinKg" },
        { name: t`boxes and plug`, of: mass(weight.fittingsKg), why: "weight.fittingsKg" },
      ]}
    />
  );
}

function StageTable({ plan, weight }: { plan: Plan; weight: NonNullable<Plan["weight"]> }) {
  const { reader } = useSettings();
  const t = tell(reader);
  // Pounds and ounces beside all of them are wider than a phone.
  const inGrams = (massKg: number) => showQuantity(mass(massKg), { ...reader, units: "mm" });
  const scale = new Map(plan.weighins?.entries.map(({ after, massKg }) => [after, massKg]));
  return (
    <FactTable
      caption={t`Weight after each coat`}
      heads={[t`board after`, t`plan`, t`band`, t`on the scale`]}
      rows={weight.stages.map(({ id, massKg, massLowKg, massHighKg }) => {
        const readKg = scale.get(id);
        return {
          id,
          name: stageName(id, reader),
          cells: [
            <Amount key="plan" of={mass(massKg)} why={`weight.stages[${id}].massKg`} />,
            <span key="band">{`${inGrams(massLowKg)} – ${inGrams(massHighKg)}`}</span>,
            <Amount key="scale" of={readKg === undefined ? null : mass(readKg)} />,
          ],
        };
      })}
    />
  );
}

function Sentences({ sentences }: { sentences: readonly string[] }) {
  return (
    <ul className="told">
      {sentences.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
    </ul>
  );
}
