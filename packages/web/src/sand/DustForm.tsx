import type { BoardFile } from "@lapline/contract";
import { type Plan, standingEntries } from "@lapline/engine";
import { tell } from "@lapline/present";
import { useState } from "react";
import type { FieldPath } from "../board/withField";
import { NoteForm } from "../record/NoteForm";
import { correcting, newEntry } from "../record/newEntry";
import { quantityProblem } from "../record/quantityProblem";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { wallTime } from "../shared/wallTime";

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
  const after = papers.find((grit) => grit === picked) ?? papers[0] ?? "";
  const write = (mass: string) => {
    const record = file.record ?? [];
    const earlier = standingEntries(record).findLast(
      (entry) => entry.kind === "dust" && entry.face === face && entry.after === after,
    );
    const at = wallTime(new Date());
    const entry = newEntry(record, { kind: "dust", face, mass, after, at, ...correcting(earlier) });
    edit(["record"], [...record, entry]);
  };
  return (
    <NoteForm
      className="through-form"
      name={t`Dust weighed`}
      label={t`All its dust so far weighs`}
      dimension="mass"
      problemOf={(text) => quantityProblem(text, "mass")}
      write={write}
    >
      <Choice<(typeof FACES)[number]> label={t`Face`} value={face} choices={FACES} choose={setFace} />
      <Choice label={t`After the paper`} value={after} choices={papers} choose={setPicked} />
    </NoteForm>
  );
}
