import { useState } from "react";
import { failureWords } from "../api/failureWords";
import { bringBack, listPutAway, type PutAwayEntry } from "../api/shedClient";
import { useTell } from "../settings/useTell";
import { wallTime } from "../shared/wallTime";

/** The boards that were put away, for whoever opens the list; each can be brought back as it was. */
export function PutAwayBoards({ cameBack }: { cameBack(): void }) {
  const t = useTell();
  const [entries, setEntries] = useState<readonly PutAwayEntry[] | null>(null);
  const [why, setWhy] = useState<string | null>(null);
  const attempt = async (act: () => Promise<void>) => {
    try {
      await act();
      setEntries(await listPutAway());
      setWhy(null);
    } catch (error) {
      setWhy(failureWords(error, t));
    }
  };
  return (
    <details
      className="fold put-away"
      onToggle={(event) => event.currentTarget.open && void attempt(async () => undefined)}
    >
      <summary>
        <h2>{t`Put away`}</h2>
      </summary>
      <div role="status">
        {why !== null && <p className="tape tape-blocker">{why}</p>}
        {entries?.length === 0 && <p>{t`No board is put away.`}</p>}
      </div>
      {entries !== null && entries.length > 0 && (
        <ul>
          {entries.map(({ id, name, putAwayAt }) => (
            <li key={id}>
              <span>
                <b>{name}</b> <span className="quiet">{t`since ${wallTime(new Date(putAwayAt))}`}</span>
              </span>
              <button
                type="button"
                aria-label={t`Bring ${name} back`}
                onClick={() =>
                  void attempt(async () => {
                    await bringBack(id);
                    cameBack();
                  })
                }
              >{t`Bring back`}</button>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
