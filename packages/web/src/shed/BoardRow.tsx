import { useEffect, useMemo, useState } from "react";
import { type BoardEntry, readBoard } from "../api/boardClient";
import { type PlanRead, planOf } from "../board/planOf";
import { useWidthPx } from "../drawing/useWidthPx";
import { BoardNames } from "./BoardNames";
import { ShopDays } from "./ShopDays";
import { StandingBoard } from "./StandingBoard";

/** The tallest board's height on the sheet, as the style sheet keeps room for it; the others are drawn to its scale. */
const TALLEST_MM = { narrow: 74, wide: 140 } as const;
const WIDE_FROM_PX = 720;

/** The boards leaning along the wall, all to one scale. */
export default function BoardRow({ entries }: { entries: readonly BoardEntry[] }) {
  const [ref, widthPx] = useWidthPx<HTMLDivElement>();
  const reads = useReads(entries);
  const tallestMm = (widthPx ?? 0) >= WIDE_FROM_PX ? TALLEST_MM.wide : TALLEST_MM.narrow;
  const lengthsM = [...reads.values()].map((read) =>
    read?.ok === true ? (read.plan.shape?.lengthM ?? 0) : 0,
  );
  const plans = useMemo(
    () => [...reads.values()].flatMap((read) => (read?.ok === true ? [read.plan] : [])),
    [reads],
  );
  const isReady = widthPx !== null && reads.size === entries.length;
  return (
    <div ref={ref}>
      {isReady ? (
        <ul className="boards">
          {entries.map((entry) => (
            <li key={entry.id}>
              <StandingBoard
                entry={entry}
                read={reads.get(entry.id) ?? null}
                mmPerM={tallestMm / Math.max(...lengthsM, 1)}
              />
            </li>
          ))}
        </ul>
      ) : (
        <BoardNames entries={entries} />
      )}
      {isReady && <ShopDays plans={plans} />}
    </div>
  );
}

/** Each board fetched and worked out; null where it could not be fetched. */
function useReads(entries: readonly BoardEntry[]): ReadonlyMap<string, PlanRead | null> {
  const [reads, setReads] = useState<ReadonlyMap<string, PlanRead | null>>(new Map());
  useEffect(() => {
    let current = true;
    const fetched = entries.map(async ({ id }): Promise<readonly [string, PlanRead | null]> => {
      try {
        return [id, planOf((await readBoard(id)).text)];
      } catch {
        return [id, null];
      }
    });
    Promise.all(fetched).then((all) => current && setReads(new Map(all)));
    return () => {
      current = false;
    };
  }, [entries]);
  return reads;
}
