import type { Finding, Plan } from "@lapline/engine";
import { symmetrySentences } from "@lapline/present";
import { ReadingsView } from "../charts/ReadingsView";
import { OrderFields } from "../order/OrderFields";
import { PadProvider } from "../pad/PadProvider";
import { PadSwitch } from "../pad/PadSwitch";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Fractions } from "../shared/Fractions";
import { SolidFold } from "../solid/SolidFold";
import type { Draft } from "./applyEdit";
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
  const { shape } = plan;
  const fields = { file: draft.file, plan, problems: draft.problems, edit };
  return (
    <PartSection id="measure" findings={plan.findings} placed={isReading}>
      <PadProvider>
        {shape === null ? (
          <MeasureFirst file={draft.file} />
        ) : (
          <>
            <MeasureFigures plan={plan} shape={shape} />
            <PlanView plan={plan} />
            <SymmetryWords plan={plan} />
            <ProfileView plan={plan} />
            <ReadingsView plan={plan} />
            <SolidFold plan={plan} survey={draft.good.board.survey} first="difference" />
          </>
        )}
        <h3>{t`Readings`}</h3>
        <PadSwitch />
        <SurveyFields {...fields} />
        <SurveyTable {...fields} />
        <SurveyMore {...fields} />
        <OrderFields {...fields} />
      </PadProvider>
    </PartSection>
  );
}

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
