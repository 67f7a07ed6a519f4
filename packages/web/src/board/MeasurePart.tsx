import { type Finding, length, volume } from "@lapline/engine";
import { centrelineWords, symmetryWords } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";
import { PartSection } from "./PartSection";
import { PlanView } from "./PlanView";
import { ProfileView } from "./ProfileView";
import { SurveyFields } from "./SurveyFields";
import { SurveyTable } from "./SurveyTable";
import type { Draft } from "./useDraft";
import type { FieldPath } from "./withField";

interface MeasurePartProps {
  readonly draft: Draft;
  edit(path: FieldPath, value: unknown): void;
}

/** The tape with the board along it, how true the board is, and the readings to be typed. */
export function MeasurePart({ draft, edit }: MeasurePartProps) {
  const { units } = useSettings();
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
          <p className="says">
            <Fractions text={symmetryWords(shape.symmetry, units)} />{" "}
            <Fractions text={centrelineWords(shape.symmetry)} />
          </p>
          <ProfileView plan={plan} />
        </>
      )}
      <h3>Readings</h3>
      <SurveyFields {...fields} />
      <SurveyTable {...fields} />
    </PartSection>
  );
}

/** What concerns one reading stands at its field. */
function isReading(finding: Finding): boolean {
  return finding.severity !== "blocker" && /^survey\.stations\[\d+\]\.\w+$/.test(finding.path);
}
