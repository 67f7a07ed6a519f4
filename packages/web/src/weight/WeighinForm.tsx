import type { BoardFile } from "@lapline/contract";
import { type Plan, parseQuantity } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useState } from "react";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
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
  const [text, setText] = useState("");
  const [isAsked, setAsked] = useState(false);
  const [picked, setPicked] = useState<string | null>(null);
  const record = file.record ?? [];
  const ids = stages.map(({ id }) => id);
  const isBlankWeighed = file.blank?.shapedMass !== undefined;
  const after = picked ?? nextWeighing(record, isBlankWeighed ? ids.filter((id) => id !== BLANK) : ids);
  const read = parseQuantity(text, "mass");
  const note = () => {
    setAsked(true);
    if (!read.ok) return;
    writeWeighing({ file, edit }, after, text);
    setText("");
    setAsked(false);
    setPicked(null);
  };
  return (
    <form
      className="weigh-in"
      onSubmit={(event) => {
        event.preventDefault();
        note();
      }}
    >
      <Choice
        label={t`On the scale after`}
        value={after}
        choices={ids}
        names={Object.fromEntries(ids.map((id) => [id, stageName(id, reader)]))}
        choose={setPicked}
      />
      <QuantityField
        label={t`The board weighs`}
        value={text}
        dimension="mass"
        problem={isAsked && !read.ok ? read.reason : undefined}
        onType={setText}
      />
      <button type="submit">{t`Write it down`}</button>
    </form>
  );
}
