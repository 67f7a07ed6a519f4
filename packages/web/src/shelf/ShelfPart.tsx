import { useCallback, useEffect, useState } from "react";
import { failureWords } from "../api/failureWords";
import { keepOnShelf, listShelf, type ShelfRecord } from "../api/shelfClient";
import type { GlassForm } from "../glass/GlassForm";
import { useTell } from "../settings/useTell";
import { type BoardShelf, listShelfRows, placeOnBoard, type ShelfRow } from "./listShelfRows";
import "./shelf.css";

/** What the shop keeps for all its boards beside what this one has: taken from the shelf, or kept on it, by a touch. */
export default function ShelfPart({ form }: { readonly form: GlassForm }) {
  const t = useTell();
  const [records, setRecords] = useState<readonly ShelfRecord[] | null>(null);
  const [failed, setFailed] = useState<unknown>(null);
  const [done, setDone] = useState<string | null>(null);
  const attempt = useCallback(async (act: () => Promise<void>) => {
    try {
      await act();
      setFailed(null);
    } catch (error) {
      setDone(null);
      setFailed(error);
    }
    // What is there is shown also after it was not taken: somebody else may have changed it.
    await listShelf().then(setRecords, setFailed);
  }, []);
  useEffect(() => {
    void attempt(async () => undefined);
  }, [attempt]);
  const keep = ({ shelf, id, name, onBoard, onShelf }: ShelfRow) =>
    attempt(async () => {
      await keepOnShelf({ shelf, id, record: onBoard, revision: onShelf?.revision ?? null });
      setDone(t`${name}: kept on the shelf for every board.`);
    });
  const take = ({ shelf, id, name, onShelf }: ShelfRow) => {
    form.edit(placeOnBoard(shelf, id), onShelf?.record);
    setFailed(null);
    setDone(t`${name}: taken from the shelf.`);
  };
  const priced = form.plan.cost?.lines.map(({ id }) => id) ?? [];
  const rows = records === null ? [] : listShelfRows({ file: form.file, records, priced });
  return (
    <div className="shelf" aria-busy={records === null && failed === null}>
      <p className="quiet">
        {t`The shelf holds materials and prices for every board of the shop. What is taken from it is a copy: the board stays as it is when the shelf changes.`}
      </p>
      {records !== null && rows.length === 0 && (
        <p>{t`Nothing here yet: a material of your own or a price on this board can be kept on it.`}</p>
      )}
      {rows.length > 0 && (
        <ul className="paper-list">
          {rows.map((row) => (
            <ShelfLine
              key={`${row.shelf}/${row.id}`}
              row={row}
              keep={() => void keep(row)}
              take={() => take(row)}
            />
          ))}
        </ul>
      )}
      <div role="status">
        {failed !== null && <p className="tape tape-blocker">{failureWords(failed, t)}</p>}
        {done !== null && <p>{done}</p>}
      </div>
    </div>
  );
}

interface ShelfLineProps {
  readonly row: ShelfRow;
  keep(): void;
  take(): void;
}

function ShelfLine({ row: { shelf, name, state }, keep, take }: ShelfLineProps) {
  const t = useTell();
  const kinds: Readonly<Record<BoardShelf, string>> = {
    resins: t`resin`,
    cloths: t`cloth`,
    foams: t`foam`,
    woods: t`wood`,
    fillers: t`filler for resin`,
    tints: t`tint`,
    prices: t`price of a pack`,
    rolls: t`roll of cloth`,
  };
  const words: Readonly<Record<typeof state, string>> = {
    "on-shelf": t`on the shelf`,
    "on-board": t`on this board`,
    same: t`the same on this board and on the shelf`,
    different: t`not the same on this board and on the shelf`,
  };
  return (
    <li>
      <span>
        <b>{name}</b>, {kinds[shelf]}
      </span>
      <span className="quiet">{words[state]}</span>
      {(state === "on-shelf" || state === "different") && (
        <button type="button" className="plain" onClick={take}>
          {t`take from the shelf`}
          <span className="unseen"> {name}</span>
        </button>
      )}
      {(state === "on-board" || state === "different") && (
        <button type="button" className="plain" onClick={keep}>
          {t`keep on the shelf`}
          <span className="unseen"> {name}</span>
        </button>
      )}
    </li>
  );
}
