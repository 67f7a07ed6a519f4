import type { BoardFile } from "@lapline/contract";
import { tellPhrase } from "@lapline/present";
import { type DragEvent, useId, useState } from "react";
import { planner } from "../plan/tabPlanner";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { foundWords } from "../shared/foundWords";
import { type GivenFile, readGivenFile } from "./readGivenFile";

interface FromFileProps {
  /** The board that a table of readings goes into. */
  readonly begun: BoardFile;
  keepText(text: string): void;
  takeTable(survey: BoardFile["survey"]): void;
  takeName(name: string): void;
  /** Where it could not even be looked at. */
  fail(why: unknown): void;
}

/** A board file or a table of readings, dropped in or chosen; what is wrong with it is said field by field. */
export function FromFile({ begun, keepText, takeTable, takeName, fail }: FromFileProps) {
  const t = useTell();
  const id = useId();
  const [isOver, setOver] = useState(false);
  const [given, setGiven] = useState<{ readonly name: string; readonly read: GivenFile } | null>(null);
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    const read = await readGivenFile(file, begun, planner);
    setGiven({ name: file.name, read });
    if (read.kind === "board") keepText(read.text);
    if (read.kind === "survey") takeTable(read.file.survey);
    if (read.kind === "faults" && read.name !== null) takeName(read.name);
  };
  const over = (event: DragEvent) => {
    event.preventDefault();
    setOver(true);
  };
  return (
    <section className="from-file" aria-labelledby={id}>
      <h2 id={id}>{t`From a file`}</h2>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the field within does the same by keys */}
      <div
        className={isOver ? "drop drop-over" : "drop"}
        onDragOver={over}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          take(event.dataTransfer.files[0]).catch(fail);
        }}
      >
        <div className="field">
          <label htmlFor={`${id}-file`}>
            {t`A board file (.json), or readings as a table (.csv): drop it here or choose it`}
          </label>
          <input
            id={`${id}-file`}
            type="file"
            accept=".json,.csv,application/json,text/csv"
            onChange={(event) => {
              take(event.target.files?.[0]).catch(fail);
              // The same file, corrected, can be chosen again.
              event.target.value = "";
            }}
          />
        </div>
        <p className="how">{t`A table goes into the board that the three questions describe.`}</p>
      </div>
      <div role="status">{given !== null && <GivenWords {...given} />}</div>
    </section>
  );
}

function GivenWords({ name, read }: { readonly name: string; readonly read: GivenFile }) {
  const t = useTell();
  const { reader } = useSettings();
  if (read.kind === "too-large")
    return <p className="tape tape-blocker">{t`${name} is too large for a board.`}</p>;
  if (read.kind === "survey")
    return (
      <p className="tape">{t`${name}: ${read.file.survey.stations.length} stations read. Answer the questions above, then put the board in the Shed.`}</p>
    );
  if (read.kind === "board") return null;
  return (
    <div className="faults">
      <p className="tape tape-blocker">
        {read.faults.length === 1
          ? t`${name} cannot be read yet: one thing is to be put right.`
          : t`${name} cannot be read yet: ${read.faults.length} things are to be put right.`}
      </p>
      <dl>
        {read.faults.map(({ place, line, read: found, says }) => (
          <div key={`${place} ${JSON.stringify(says)}`}>
            <dt>
              {place === "" || place === "(file)" ? t`the file` : place}
              {line !== null && <span className="quiet"> {t`line ${line}`}</span>}
            </dt>
            <dd>
              {t`read ${foundWords(found, reader)}`}; {tellPhrase(says, reader)}
            </dd>
          </div>
        ))}
      </dl>
      {read.name !== null && (
        <p className="how">{t`Its name stands above: the three questions begin the board anew.`}</p>
      )}
    </div>
  );
}
