import type { Finding, Plan } from "@lapline/engine";
import { symmetrySentences } from "@lapline/present";
import { memo } from "react";
import { ReadingsView } from "../charts/ReadingsView";
import { OrderFields } from "../order/OrderFields";
import { PadProvider } from "../pad/PadProvider";
import { PadSwitch } from "../pad/PadSwitch";
import type { GoodBoard } from "../plan/GoodBoard";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { InTurn } from "../shared/InTurn";
import { SolidFold } from "../solid/SolidFold";
import type { Draft } from "./Draft";
import { MeasureFigures } from "./MeasureFigures";
import { MeasureFirst } from "./MeasureFirst";
import { PartSection } from "./PartSection";
import { PlanView } from "./PlanView";
import { ProfileView } from "./ProfileView";
import { SurveyFields } from "./SurveyFields";
import { SurveyMore } from "./SurveyMore";
import { SurveyTable } from "./SurveyTable";
import type { FieldPath } from "./withField";

interface MeasurePartProps {
  readonly draft: Draft;
  edit(path: FieldPath, value: unknown): void;
}

/** The tape with the board along it, how true the board is, and the readings to be typed. */
export function MeasurePart({ draft, edit }: MeasurePartProps) {
  const t = useTell();
  const { plan } = draft.good;
  const { file, problems } = draft;
  return (
    <PartSection id="measure" findings={plan.findings} placed={isReading}>
      <PadProvider>
        {plan.shape === null ? <MeasureFirst file={file} /> : <Measured good={draft.good} />}
        <h3>{t`Readings`}</h3>
        <PadSwitch />
        <SurveyFields {...{ file, problems, edit }} />
        <SurveyTable {...{ file, plan, problems, edit }} />
        <SurveyMore {...{ file, problems, edit }} />
        <OrderFields {...{ file, problems, edit }} />
      </PadProvider>
    </PartSection>
  );
}

/** What follows from the readings, each piece drawn anew in its turn. */
const Measured = memo(function Measured({ good }: { good: GoodBoard }) {
  return (
    <>
      <InTurn of={good.plan}>
        {(plan) => plan.shape !== null && <MeasureFigures plan={plan} shape={plan.shape} />}
      </InTurn>
      <InTurn of={good.plan}>{(plan) => <PlanView plan={plan} />}</InTurn>
      <InTurn of={good.plan}>{(plan) => <SymmetryWords plan={plan} />}</InTurn>
      <InTurn of={good.plan}>{(plan) => <ProfileView plan={plan} />}</InTurn>
      <InTurn of={good.plan}>{(plan) => <ReadingsView plan={plan} />}</InTurn>
      <InTurn of={good}>
        {({ board, plan }) => <SolidFold plan={plan} survey={board.survey} first="difference" />}
      </InTurn>
    </>
  );
});

/** How true the board is, as far as no piece of tape above says it. */
function SymmetryWords({ plan }: { plan: Plan }) {
  const { reader } = useSettings();
  const sentences = symmetrySentences(plan, reader, true);
  if (sentences.length === 0) return null;
  return (
    <p className="says">
      <Fractions text={sentences.join(" ")} />
    </p>
  );
}

/** What concerns one reading stands at its field. */
function isReading(finding: Finding): boolean {
  return finding.severity !== "blocker" && /^survey\.stations\[\d+\]\.\w+$/.test(finding.path);
}
