import type { BoardFile } from "@lapline/contract";
import type { Plan } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useState } from "react";
import type { FieldPath } from "../board/withField";
import { NoteForm } from "../record/NoteForm";
import { quantityProblem } from "../record/quantityProblem";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { stageName } from "./stageName";
import { nextWeighing } from "./weighedEntry";
import { BLANK, writeWeighing } from "./writeWeighing";

interface WeighinFormProps {
  readonly file: BoardFile;
  readonly stages: NonNullable<Plan["weight"]>["stages"];
  edit(path: FieldPath, value: unknown): void;
}

/** The scale's reading after the step just done, put into the record; a later one after the same step corrects it. */
export function WeighinForm({ file, stages, edit }: WeighinFormProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const [picked, setPicked] = useState<string | null>(null);
  const record = file.record ?? [];
  const ids = stages.map(({ id }) => id);
  const isBlankWeighed = file.blank?.shapedMass !== undefined;
  const after = picked ?? nextWeighing(record, isBlankWeighed ? ids.filter((id) => id !== BLANK) : ids);
  return (
    <NoteForm
      className="weigh-in"
      label={t`The board weighs`}
      dimension="mass"
      problemOf={(text) => quantityProblem(text, "mass")}
      write={(mass) => {
        writeWeighing({ file, edit }, after, mass);
        setPicked(null);
      }}
    >
      <Choice
        label={t`On the scale after`}
        value={after}
        choices={ids}
        names={Object.fromEntries(ids.map((id) => [id, stageName(id, reader)]))}
        choose={setPicked}
      />
    </NoteForm>
  );
}
