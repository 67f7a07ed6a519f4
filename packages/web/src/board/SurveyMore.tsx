import type { BoardFile, Problem } from "@lapline/contract";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { Fold } from "../shared/Fold";
import { problemAt } from "./problemAt";
import { QuantityField } from "./QuantityField";
import { SectionFields } from "./SectionFields";
import type { FieldPath } from "./withField";

interface SurveyMoreProps {
  readonly file: BoardFile;
  readonly problems: readonly Problem[];
  edit(path: FieldPath, value: unknown): void;
}

const UNSAID = "unsaid";
const HALF_WIDTHS_AT = ["apex", "bottom-edge"] as const;

/** What of the survey is seldom said: how well the tape reads, where half-widths were taken, twist, and the section by place. */
export function SurveyMore({ file, problems, edit }: SurveyMoreProps) {
  const t = useTell();
  const { survey } = file;
  const quantity = (label: string, value: string | undefined, path: FieldPath, isAngle = false) => (
    <QuantityField
      label={label}
      value={value}
      dimension={isAngle ? "angle" : "length"}
      problem={problemAt(problems, path)}
      onType={(text) => edit(path, text.trim() === "" ? undefined : text)}
    />
  );
  return (
    <Fold title={t`Section, twist, how the tape reads`} isFolded>
      <div className="survey-fields">
        {quantity(t`one reading is good to`, survey.tape, ["survey", "tape"])}
        <Choice
          label={t`half-widths taken at`}
          value={survey.halfWidthsAt ?? UNSAID}
          choices={[UNSAID, ...HALF_WIDTHS_AT] as const}
          names={{
            [UNSAID]: t`not said`,
            apex: t`the rail's widest line`,
            "bottom-edge": t`the bottom's edge`,
          }}
          choose={(value) => edit(["survey", "halfWidthsAt"], value === UNSAID ? undefined : value)}
        />
        {quantity(t`twist, left of the tail up`, survey.twist, ["survey", "twist"], true)}
      </div>
      <p className="how">
        {t`Twist: winding sticks across tail and nose, the angle between them, positive when the tail's left side is up.`}
      </p>
      <SectionFields file={file} problems={problems} edit={edit} />
    </Fold>
  );
}
