import type { BoardFile } from "@lapline/contract";
import { useEffect, useState } from "react";
import type { SavedVersion } from "../api/boardClient";
import { fieldName } from "../board/fieldName";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { Fractions } from "../shared/Fractions";
import { type Differences, listDifferences } from "./listDifferences";
import { valueWords } from "./valueWords";

interface ComparedVersionsProps {
  readonly asked: { readonly from: number; readonly to: number | null };
  readonly versions: readonly SavedVersion[];
  /** The board as it stands on the page. */
  readonly now: BoardFile;
  read(version: number): Promise<BoardFile | string>;
  ask(asked: { from: number; to: number | null }): void;
}

const NOW = "now";

/** Two versions, field by field where they differ. */
export function ComparedVersions({ asked, versions, now, read, ask }: ComparedVersionsProps) {
  const t = useTell();
  const [files, setFiles] = useState<{ from: BoardFile; to: BoardFile | null } | null>(null);
  const [why, setWhy] = useState<string | null>(null);
  const { from, to } = asked;
  useEffect(() => {
    let isCurrent = true;
    Promise.all([read(from), to === null ? null : read(to)]).then(([one, other]) => {
      if (!isCurrent) return;
      const wrong = [one, other].find((each) => typeof each === "string");
      if (typeof wrong === "string") setWhy(wrong);
      else setFiles({ from: one as BoardFile, to: other as BoardFile | null });
    });
    return () => {
      isCurrent = false;
    };
  }, [from, to, read]);
  const numbers = versions.map(({ version }) => String(version));
  const names = Object.fromEntries(numbers.map((each) => [each, t`version ${each}`]));
  return (
    <section className="versions" aria-labelledby="compared">
      <h3 id="compared">{t`What changed`}</h3>
      <div className="survey-fields">
        <Choice
          label={t`from`}
          value={String(from)}
          choices={numbers}
          names={names}
          choose={(each) => ask({ from: Number(each), to })}
        />
        <Choice
          label={t`to`}
          value={to === null ? NOW : String(to)}
          choices={[NOW, ...numbers]}
          names={{ ...names, [NOW]: t`as it is now` }}
          choose={(each) => ask({ from, to: each === NOW ? null : Number(each) })}
        />
      </div>
      {why !== null && <p className="tape tape-blocker">{why}</p>}
      {files !== null && <DifferenceTable from={files.from} to={files.to ?? now} />}
    </section>
  );
}

function DifferenceTable({ from, to }: { from: BoardFile; to: BoardFile }) {
  const t = useTell();
  const { reader } = useSettings();
  const differences = listDifferences(from, to);
  const rows = rowsOf(differences, (path, value) => fieldName(value === undefined ? from : to, path, reader));
  if (rows.length === 0) return <p className="says">{t`The two are the same.`}</p>;
  return (
    <table className="compared">
      <thead>
        <tr>
          <th scope="col">{t`field`}</th>
          <th scope="col">{t`was`}</th>
          <th scope="col">{t`is`}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, name, was, is }) => (
          <tr key={key}>
            <th scope="row">{name ?? t`record`}</th>
            <td>
              <Fractions text={valueWords(was, reader)} />
            </td>
            <td>
              <Fractions text={valueWords(is, reader)} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function rowsOf(
  { fields, fewer, more }: Differences,
  nameOf: (path: string, is: unknown) => string,
): readonly { key: string; name: string | null; was: unknown; is: unknown }[] {
  return [
    ...fields.map(({ path, from, to }) => ({ key: path, name: nameOf(path, to), was: from, is: to })),
    ...fewer.map(({ id, ...entry }) => ({ key: id, name: null, was: entry, is: undefined })),
    ...more.map(({ id, ...entry }) => ({ key: id, name: null, was: undefined, is: entry })),
  ];
}
