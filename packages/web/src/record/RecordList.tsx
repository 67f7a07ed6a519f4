import type { BoardFile } from "@lapline/contract";
import type { Plan } from "@lapline/engine";
import { tell } from "@lapline/present";
import type { FieldPath } from "../board/withField";
import { useSettings } from "../settings/Settings";
import { Fold } from "../shared/Fold";
import { wallTime } from "../shared/wallTime";
import { entryWords } from "./entryWords";
import { newEntry, type RecordEntry } from "./newEntry";

interface RecordListProps {
  readonly file: BoardFile;
  readonly plan: Plan;
  edit(path: FieldPath, value: unknown): void;
}

/** Everything that was written down, oldest first; what a later entry corrects is struck through, never taken away. */
export function RecordList({ file, plan, edit }: RecordListProps) {
  const { reader } = useSettings();
  const t = tell(reader);
  const record = file.record ?? [];
  if (record.length === 0) return null;
  const correctedBy = new Map(
    record.flatMap(({ id, corrects }) => (corrects === undefined ? [] : [[corrects, id]])),
  );
  const numberOf = (id: string) => record.findIndex((entry) => entry.id === id) + 1;
  const strike = (entry: RecordEntry) =>
    edit(
      ["record"],
      [...record, newEntry(record, { kind: "struck", corrects: entry.id, at: wallTime(new Date()) })],
    );
  return (
    <Fold title={t`Record`} isFolded>
      <ol className="record">
        {record.map((entry) => {
          const by = correctedBy.get(entry.id);
          const words = entryWords(entry, { plan, numberOf }, reader);
          return (
            <li key={entry.id}>
              <span className="quiet">
                {numberOf(entry.id)}. {entry.at !== undefined && t`${entry.at.slice(0, 16)}`}
              </span>
              {by === undefined ? <span>{words}</span> : <s>{words}</s>}
              {by !== undefined && <span className="quiet">{t`corrected by ${numberOf(by)}`}</span>}
              {by === undefined && entry.kind !== "struck" && (
                <button type="button" aria-label={t`${words}: it was a slip`} onClick={() => strike(entry)}>
                  {t`It was a slip`}
                </button>
              )}
            </li>
          );
        })}
      </ol>
    </Fold>
  );
}
