import type { BoardFile } from "@lapline/contract";
import { type Plan, parseQuantity, standingEntries } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useState } from "react";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import { newEntry } from "../record/newEntry";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { wallTime } from "../weight/wallTime";

interface DustFormProps {
  readonly file: BoardFile;
  readonly sanding: NonNullable<Plan["sanding"]>;
  edit(path: FieldPath, value: unknown): void;
}

const FACES = ["bottom", "deck"] as const;

/** All dust of one face so far, bag and cloth on the scale: it says how much the hand takes off over what the model has. */
export function DustForm({ file, sanding, edit }: DustFormProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const papers = sanding.grits.map(({ grit }) => grit);
  const [face, setFace] = useState<(typeof FACES)[number]>("bottom");
  const [picked, setPicked] = useState<string | null>(null);
  const [text, setText] = useState("");
  const [isAsked, setAsked] = useState(false);
  const after = papers.find((grit) => grit === picked) ?? papers[0] ?? "";
  const read = parseQuantity(text, "mass");
  const note = () => {
    setAsked(true);
    if (!read.ok) return;
    const record = file.record ?? [];
    const earlier = standingEntries(record).findLast(
      (entry) => entry.kind === "dust" && entry.face === face && entry.after === after,
    );
    const entry = newEntry(record, {
      kind: "dust",
      face,
      mass: text.trim(),
      after,
      at: wallTime(new Date()),
      ...(earlier === undefined ? {} : { corrects: earlier.id }),
    });
    edit(["record"], [...record, entry]);
    setText("");
    setAsked(false);
  };
  return (
    <form
      className="through-form"
      aria-label={t`Dust weighed`}
      onSubmit={(event) => {
        event.preventDefault();
        note();
      }}
    >
      <Choice<(typeof FACES)[number]> label={t`Face`} value={face} choices={FACES} choose={setFace} />
      <Choice label={t`After the paper`} value={after} choices={papers} choose={setPicked} />
      <QuantityField
        label={t`All its dust so far weighs`}
        value={text}
        dimension="mass"
        problem={isAsked && !read.ok ? read.reason : undefined}
        onType={setText}
      />
      <button type="submit">{t`Write it down`}</button>
    </form>
  );
}
