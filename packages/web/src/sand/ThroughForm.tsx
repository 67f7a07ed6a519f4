import type { BoardFile } from "@lapline/contract";
import { tell } from "@lapline/present";
import { useState } from "react";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import { newEntry } from "../record/newEntry";
import { quantityProblem } from "../record/quantityProblem";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { wallTime } from "../shared/wallTime";

interface ThroughFormProps {
  readonly file: BoardFile;
  edit(path: FieldPath, value: unknown): void;
}

const FACES = ["deck", "bottom"] as const;
const SIDES = ["left", "right"] as const;
const SHOWS = ["shine", "weave", "glass", "foam"] as const;
const EMPTY = { fromTail: "", fromCentreline: "", size: "" };

/** Where the sander went too far, or a low spot stayed shiny: put into the record, and the plan changes with it. */
export function ThroughForm({ file, edit }: ThroughFormProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const [face, setFace] = useState<(typeof FACES)[number]>("deck");
  const [side, setSide] = useState<(typeof SIDES)[number]>("left");
  const [shows, setShows] = useState<(typeof SHOWS)[number]>("foam");
  const [typed, setTyped] = useState(EMPTY);
  const [isAsked, setAsked] = useState(false);
  const note = () => {
    setAsked(true);
    if (Object.values(typed).some((text) => quantityProblem(text, "length") !== undefined)) return;
    const record = file.record ?? [];
    const at = wallTime(new Date());
    edit(
      ["record"],
      [...record, newEntry(record, { kind: "sand-through", face, side, shows, ...typed, at })],
    );
    setTyped(EMPTY);
    setAsked(false);
  };
  const field = (name: keyof typeof EMPTY, label: string) => (
    <QuantityField
      label={label}
      value={typed[name]}
      problem={isAsked ? quantityProblem(typed[name], "length") : undefined}
      onType={(text) => setTyped({ ...typed, [name]: text })}
    />
  );
  return (
    <form
      className="through-form"
      aria-label={t`Sanded through`}
      onSubmit={(event) => {
        event.preventDefault();
        note();
      }}
    >
      <Choice<(typeof FACES)[number]> label={t`Face`} value={face} choices={FACES} choose={setFace} />
      <Choice<(typeof SIDES)[number]> label={t`Side`} value={side} choices={SIDES} choose={setSide} />
      <Choice<(typeof SHOWS)[number]> label={t`Shows`} value={shows} choices={SHOWS} choose={setShows} />
      {field("fromTail", t`From the tail`)}
      {field("fromCentreline", t`From the centreline`)}
      {field("size", t`Size across`)}
      <button type="submit">{t`Write it down`}</button>
    </form>
  );
}
