import type { BoardFile } from "@lapline/contract";
import { type Plan, parseQuantity, standingEntries } from "@lapline/engine";
import { type Tell, tell, zoneName } from "@lapline/present";
import { useState } from "react";
import { QuantityField } from "../board/QuantityField";
import type { FieldPath } from "../board/withField";
import { newEntry } from "../record/newEntry";
import { useSettings } from "../settings/Settings";
import { Choice } from "../shared/Choice";
import { wallTime } from "../weight/wallTime";

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
  const [text, setText] = useState("");
  const [isAsked, setAsked] = useState(false);
  const zone = picked ?? zones[0] ?? "";
  const paper = papers.includes(after) ? after : BEFORE;
  const problem = filmProblem(text, t);
  const note = () => {
    setAsked(true);
    if (problem !== undefined) return;
    const record = file.record ?? [];
    const papered = paper === BEFORE ? {} : { after: paper };
    const earlier = standingEntries(record).findLast(
      (entry) => entry.kind === "film" && entry.zone === zone && (entry.after ?? BEFORE) === paper,
    );
    const entry = newEntry(record, {
      kind: "film",
      zone,
      film: text.trim(),
      ...papered,
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
      aria-label={t`Film gauged`}
      onSubmit={(event) => {
        event.preventDefault();
        note();
      }}
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
      <QuantityField
        label={t`The gauge reads`}
        value={text}
        dimension="film"
        problem={isAsked ? problem : undefined}
        onType={setText}
      />
      <button type="submit">{t`Write it down`}</button>
    </form>
  );
}

/** No film is thinner than nought; anything else that is wrong with it the plan says. */
function filmProblem(text: string, t: Tell): string | undefined {
  const read = parseQuantity(text, "length");
  if (!read.ok) return read.reason;
  return read.value < 0 ? t`a film is nought or more` : undefined;
}
