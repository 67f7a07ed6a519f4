import { useState } from "react";
import { failureWords } from "../api/failureWords";
import { putAway } from "../api/shedClient";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { moveTo } from "../shared/usePath";
import { type BoardOnPage, boardPapers } from "./boardPapers";
import { SheetList } from "./SheetList";
import "./papers.css";

interface PapersPartProps extends Omit<BoardOnPage, "reader"> {
  /** Whether what stands on the page is kept: a Sheet is made of what is kept. */
  readonly isSaved: boolean;
}

/** All that can be taken away from this page on paper or as a file, and putting the board away. */
export function PapersPart({ isSaved, ...on }: PapersPartProps) {
  const t = useTell();
  const { reader } = useSettings();
  const [why, setWhy] = useState<string | null>(null);
  const attempt = async (act: () => Promise<void>) => {
    try {
      await act();
      setWhy(null);
    } catch (error) {
      setWhy(failureWords(error, t));
    }
  };
  return (
    <section id="papers" className="part papers" aria-labelledby="papers-name">
      <h2 id="papers-name">{t`Paper and files`}</h2>
      <SheetList id={on.id} isSaved={isSaved} />
      <ul className="paper-list">
        <li>
          <a href={`/api/boards/${encodeURIComponent(on.id)}`} download={`${on.id}.json`}>
            {t`Board file (.json)`}
          </a>
          <span className="quiet">{t`all that was typed and recorded, to keep or to hand on`}</span>
        </li>
        {boardPapers({ ...on, reader }).map(({ id, name, words, isThere, make }) => (
          <li key={id}>
            <button
              type="button"
              className="link"
              aria-disabled={!isThere}
              onClick={() => isThere && void attempt(make)}
            >
              {name}
            </button>
            <span className="quiet">{isThere ? words : t`not yet: the plan has nothing for it`}</span>
          </li>
        ))}
        <li>
          <button type="button" className="link" onClick={() => window.print()}>
            {t`Print this page`}
          </button>
          <span className="quiet">{t`the whole plan as it stands here, in ink on white`}</span>
        </li>
      </ul>
      <div role="status">{why !== null && <p className="tape tape-blocker">{why}</p>}</div>
      <PutAway
        put={() =>
          void attempt(async () => {
            await putAway(on.id);
            moveTo("/");
          })
        }
      />
    </section>
  );
}

/** Out of the Shed by two touches; nothing is lost by it. */
function PutAway({ put }: { put(): void }) {
  const t = useTell();
  const [isAsked, setAsked] = useState(false);
  return (
    <p className="put-away-act">
      {isAsked ? (
        <>
          <span>{t`It leaves the Shed with its record and can be brought back from there.`}</span>
          <button type="button" onClick={put}>{t`Put it away`}</button>
          <button type="button" className="plain" onClick={() => setAsked(false)}>{t`Leave it`}</button>
        </>
      ) : (
        <button type="button" onClick={() => setAsked(true)}>{t`Put this board away`}</button>
      )}
    </p>
  );
}
