import { useEffect, useState } from "react";
import { failureWords } from "../api/failureWords";
import { type IssuedSheet, issueSheet, listSheets, sheetAddress } from "../api/sheetClient";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { wallTime } from "../shared/wallTime";

interface SheetListProps {
  readonly id: string;
  readonly isSaved: boolean;
}

/** The Sheets that were issued for this board, and issuing the next in this reader's units and language. */
export function SheetList({ id, isSaved }: SheetListProps) {
  const t = useTell();
  const { reader } = useSettings();
  const [sheets, setSheets] = useState<readonly IssuedSheet[]>([]);
  const [paper, setPaper] = useState<"a4" | "letter">("a4");
  const [isMaking, setMaking] = useState(false);
  const [isWanted, setWanted] = useState(false);
  const [why, setWhy] = useState<string | null>(null);
  useEffect(() => {
    let current = true;
    listSheets(id).then(
      (all) => current && setSheets(all),
      () => undefined,
    );
    return () => {
      current = false;
    };
  }, [id]);
  const issue = async () => {
    setMaking(true);
    try {
      await issueSheet(id, { paper, ...reader });
      setSheets(await listSheets(id));
      setWhy(null);
    } catch (error) {
      setWhy(failureWords(error, t));
    } finally {
      setMaking(false);
    }
  };
  // Pressed before all was saved: the press is kept, and the Sheet made of what is saved then.
  useEffect(() => {
    if (!isWanted || !isSaved) return;
    setWanted(false);
    void issue();
  });
  return (
    <div className="sheets">
      <h3>{t`The Sheet`}</h3>
      <div className="form-acts">
        <Choice<"a4" | "letter">
          label={t`paper`}
          value={paper}
          choices={["a4", "letter"]}
          names={{ a4: "A4", letter: "Letter" }}
          choose={setPaper}
        />
        <button type="button" aria-disabled={isMaking} onClick={() => setWanted(!isMaking)}>
          {t`Issue a Sheet (PDF)`}
        </button>
      </div>
      <div role="status">
        {!isSaved && (
          <p className="quiet">
            {isWanted
              ? t`The Sheet is made as soon as everything on this page is saved.`
              : t`A Sheet is made of what is saved: not everything on this page is yet.`}
          </p>
        )}
        {isMaking && <p>{t`The Sheet is being made.`}</p>}
        {why !== null && <p className="tape tape-blocker">{why}</p>}
      </div>
      {sheets.length > 0 && (
        <ul className="paper-list">
          {sheets.map((sheet) => (
            <li key={sheet.id}>
              <a
                href={sheetAddress(id, sheet.id)}
                target="_blank"
                rel="noreferrer"
              >{t`Sheet ${sheet.id} (PDF)`}</a>
              <span className="quiet">
                {t`of version ${sheet.boardVersion}, issued ${wallTime(new Date(sheet.issuedAt))}`}
              </span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
