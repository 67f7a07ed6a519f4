import type { BoardFile } from "@lapline/contract";
import { type Phrase, type Plan, parseQuantity, say, standingEntries } from "@lapline/engine";
import { tell, zoneName } from "@lapline/present";
import { useState } from "react";
import type { FieldPath } from "../board/withField";
import { NoteForm } from "../record/NoteForm";
import { correcting, newEntry } from "../record/newEntry";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { wallTime } from "../shared/wallTime";

interface FilmFormProps {
  readonly file: BoardFile;
  readonly sanding: NonNullable<Plan["sanding"]>;
  edit(path: FieldPath, value: unknown): void;
}

const BEFORE = "before";

/** What a gauge reads at one zone: it takes the place of the model there; read again after the same paper, it corrects the one before. */
export function FilmForm({ file, sanding, edit }: FilmFormProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const zones = sanding.zones.map(({ id }) => id);
  const papers = [BEFORE, ...sanding.grits.map(({ grit }) => grit)];
  const [picked, setPicked] = useState<string | null>(null);
  const [after, setAfter] = useState(BEFORE);
  const zone = picked ?? zones[0] ?? "";
  const paper = papers.includes(after) ? after : BEFORE;
  const write = (film: string) => {
    const record = file.record ?? [];
    const papered = paper === BEFORE ? {} : { after: paper };
    const earlier = standingEntries(record).findLast(
      (entry) => entry.kind === "film" && entry.zone === zone && (entry.after ?? BEFORE) === paper,
    );
    const at = wallTime(new Date());
    const entry = newEntry(record, { kind: "film", zone, film, ...papered, at, ...correcting(earlier) });
    edit(["record"], [...record, entry]);
  };
  return (
    <NoteForm
      className="through-form"
      name={t`Film gauged`}
      label={t`The gauge reads`}
      dimension="film"
      problemOf={filmProblem}
      write={write}
    >
      <Choice
        label={t`Zone`}
        value={zone}
        choices={zones}
        names={Object.fromEntries(zones.map((id) => [id, zoneName(id, reader)]))}
        choose={setPicked}
      />
      <Choice
        label={t`After the paper`}
        value={paper}
        choices={papers}
        names={{ [BEFORE]: t`none yet` }}
        choose={setAfter}
      />
    </NoteForm>
  );
}

/** No film is thinner than nought; anything else that is wrong with it the plan says. */
function filmProblem(text: string): Phrase | undefined {
  const read = parseQuantity(text, "length");
  if (!read.ok) return read.says;
  return read.value < 0 ? say`a film is nought or more` : undefined;
}
