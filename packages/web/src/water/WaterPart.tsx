import type { BoardFile } from "@lapline/contract";
import type { Plan } from "@lapline/engine";
import { barredSentence, wallTimeText, waterRules, waterState } from "@lapline/present";
import { PartSection } from "../board/PartSection";
import type { FieldPath } from "../board/withField";
import { RecordList } from "../record/RecordList";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { DaysView } from "./DaysView";
import { StepList } from "./StepList";

interface WaterPartProps {
  readonly file: BoardFile;
  readonly plan: Plan;
  edit(path: FieldPath, value: unknown): void;
}

/** The date of the first surf, the days and the steps to it, and what was written down on the way. */
export function WaterPart({ file, plan, edit }: WaterPartProps) {
  const t = useTell();
  const { reader } = useSettings();
  const { water, steps } = plan;
  return (
    <PartSection id="water" findings={plan.findings}>
      <p className="says">
        <Fractions text={barredSentence(plan, reader) ?? waterState(plan, reader)} />
      </p>
      {water.firstSurfAt !== null && (
        <p className="act">{t`First surf: ${wallTimeText(water.firstSurfAt, reader)}`}</p>
      )}
      {waterRules(reader).map((rule) => (
        <p key={rule}>{rule}</p>
      ))}
      <DaysView file={file} plan={plan} />
      {steps !== null && (
        <>
          <h3>{t`Steps`}</h3>
          <StepList steps={steps} file={file} edit={edit} />
        </>
      )}
      <RecordList file={file} plan={plan} edit={edit} />
    </PartSection>
  );
}
