import { type Finding, length, type Plan, volume } from "@lapline/engine";
import { symmetrySentences } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";
import type { Draft } from "./applyEdit";
import { PartSection } from "./PartSection";
import { PlanView } from "./PlanView";
import { ProfileView } from "./ProfileView";
import { SurveyFields } from "./SurveyFields";
import { SurveyTable } from "./SurveyTable";
import type { FieldPath } from "./withField";

interface MeasurePartProps {
  readonly draft: Draft;
  edit(path: FieldPath, value: unknown): void;
}

/** The tape with the board along it, how true the board is, and the readings to be typed. */
export function MeasurePart({ draft, edit }: MeasurePartProps) {
  const { plan, board } = draft.good;
  const { shape } = plan;
  const fields = { file: draft.file, plan, problems: draft.problems, edit };
  return (
    <PartSection id="measure" findings={plan.findings} placed={isReading}>
      {shape !== null && (
        <>
          <Figures
            entries={[
              { name: "length", of: length(shape.lengthTapeM), note: "by tape" },
              {
                name: "widest",
                of: length(shape.widthMaxM),
                note: (
                  <>
                    <Amount of={length(shape.widthMaxFromTailM)} /> from tail
                  </>
                ),
              },
              { name: "thickest", of: length(shape.thicknessMaxM) },
              {
                name: "volume",
                of: volume(shape.volumeM3),
                note: (
                  <>
                    <Amount of={volume(shape.volumeLowM3)} /> to <Amount of={volume(shape.volumeHighM3)} />
                  </>
                ),
              },
            ]}
          />
          <PlanView plan={plan} survey={board.survey} />
          <SymmetryWords plan={plan} />
          <ProfileView plan={plan} />
        </>
      )}
      <h3>Readings</h3>
      <SurveyFields {...fields} />
      <SurveyTable {...fields} />
    </PartSection>
  );
}

/** How true the board is, as far as no piece of tape above says it. */
function SymmetryWords({ plan }: { plan: Plan }) {
  const { units } = useSettings();
  const sentences = symmetrySentences(plan, units, true);
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
