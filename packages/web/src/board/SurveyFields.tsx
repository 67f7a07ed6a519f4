import type { BoardFile, Problem } from "@lapline/contract";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { problemAt } from "./problemAt";
import { QuantityField } from "./QuantityField";
import type { FieldPath } from "./withField";

interface SurveyFieldsProps {
  readonly file: BoardFile;
  readonly problems: readonly Problem[];
  edit(path: FieldPath, value: unknown): void;
}

const TAILS = ["square", "squash", "round", "pin", "swallow", "diamond"] as const;
const NOSES = ["pointed", "round"] as const;
const ALONG = ["tape", "straight"] as const;

/** What holds for the whole survey: length, how lengths were taken, tail and nose. */
export function SurveyFields({ file, problems, edit }: SurveyFieldsProps) {
  const t = useTell();
  const { survey } = file;
  const { tail } = survey;
  const quantity = (label: string, value: string | undefined, path: FieldPath) => (
    <QuantityField
      label={label}
      value={value}
      problem={problemAt(problems, path)}
      onType={(text) => edit(path, text)}
    />
  );
  return (
    <div className="survey-fields">
      {quantity(t`length`, survey.length, ["survey", "length"])}
      <Choice
        label={t`length taken by`}
        value={survey.lengthBy ?? "tape"}
        choices={ALONG}
        choose={(value) => edit(["survey", "lengthBy"], value)}
      />
      <Choice
        label={t`stations taken by`}
        value={survey.stationsBy ?? "tape"}
        choices={ALONG}
        choose={(value) => edit(["survey", "stationsBy"], value)}
      />
      <Choice
        label={t`nose`}
        value={survey.nose.kind}
        choices={NOSES}
        choose={(kind) => edit(["survey", "nose"], { kind })}
      />
      <Choice
        label={t`tail`}
        value={tail.kind}
        choices={TAILS}
        choose={(kind) => edit(["survey", "tail"], tailOf(kind, tail))}
      />
      {"width" in tail && quantity(t`tail width`, tail.width, ["survey", "tail", "width"])}
      {"depth" in tail && quantity(t`tail depth`, tail.depth, ["survey", "tail", "depth"])}
    </div>
  );
}

type Tail = BoardFile["survey"]["tail"];

/** Another kind of tail keeps what was measured where it still has that measure; what is missing is then asked for. */
function tailOf(kind: (typeof TAILS)[number], before: Tail): Tail {
  const width = "width" in before ? before.width : "";
  const depth = "depth" in before ? before.depth : "";
  if (kind === "round" || kind === "pin") return { kind };
  return kind === "swallow" || kind === "diamond" ? { kind, width, depth } : { kind, width };
}
