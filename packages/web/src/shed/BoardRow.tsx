import { parseQuantity } from "@lapline/engine";
import { lazy, Suspense, useMemo, useState } from "react";
import type { BoardEntry } from "../api/boardClient";
import { useWidthPx } from "../drawing/useWidthPx";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Choice } from "../shared/Choice";
import { BoardNames, FIRST_SHOWN } from "./BoardNames";
import { BOARD_STATES, type BoardStateKind, boardStateAt, stateName } from "./boardState";
import { matchesSearch } from "./matchesSearch";
import { StandingBoard } from "./StandingBoard";
import { useMinute } from "./useMinute";
import { type Plans, usePlans } from "./usePlans";

const ShopDays = lazy(() => import("./ShopDays").then((module) => ({ default: module.ShopDays })));

/** The tallest board's height on the sheet, as the style sheet keeps room for it; the others are drawn to its scale. */
const TALLEST_MM = { few: 140, many: 84 } as const;
const MANY_FROM = 13;
const WIDE_FROM_PX = 720;
/** Room that a row on a phone keeps beside the longest board. */
const ROW_EDGE_PX = 8;
const PX_PER_MM = 96 / 25.4;

/** So few are seen at a glance. */
const SEARCHED_FROM = 4;
const FILTERED_FROM = 8;

type Shown = "all" | BoardStateKind | "barred";

/** The boards leaning along the wall, or on a phone lying in the rack, all to one scale; searched and chosen by state where there are many. */
export default function BoardRow({ entries }: { entries: readonly BoardEntry[] }) {
  const t = useTell();
  const [ref, widthPx] = useWidthPx<HTMLDivElement>();
  const [search, setSearch] = useState("");
  const [shown, setShown] = useState<Shown>("all");
  const [most, setMost] = useState(FIRST_SHOWN);
  const nowMs = useMinute();
  const plans = usePlans(entries, entries.length <= FIRST_SHOWN || shown !== "all");
  const found = entries.filter(
    (entry) => matchesSearch(entry, search) && isShown({ shown, id: entry.id, plans, nowMs }),
  );
  const longestM = useMemo(() => Math.max(1, ...entries.map(lengthOf)), [entries]);
  const stands = (widthPx ?? 0) >= WIDE_FROM_PX;
  const many = entries.length >= MANY_FROM ? "many" : "few";
  const rackMm = Math.max(0, (widthPx ?? 0) - ROW_EDGE_PX) / PX_PER_MM;
  const mmPerM = (stands ? TALLEST_MM[many] : rackMm) / longestM;
  const done = useMemo(
    () =>
      entries.flatMap(({ id }) => {
        const read = plans.reads.get(id);
        return read?.ok === true ? [{ ...read, id }] : [];
      }),
    [entries, plans.reads],
  );
  return (
    <div ref={ref}>
      <h2 className="unseen">{t`All boards`}</h2>
      {entries.length >= SEARCHED_FROM && (
        <search className="shed-search">
          <div className="field">
            <label htmlFor="shed-search">{t`Search by name or rider`}</label>
            <input
              id="shed-search"
              type="search"
              autoComplete="off"
              value={search}
              onChange={(event) => setSearch(event.target.value)}
            />
          </div>
          {entries.length >= FILTERED_FROM && <StateChoice shown={shown} choose={setShown} />}
          <p role="status" className="quiet">
            {found.length === entries.length
              ? t`${entries.length} boards`
              : t`${found.length} of ${entries.length} boards`}
          </p>
        </search>
      )}
      {widthPx === null || widthPx <= ROW_EDGE_PX ? (
        <BoardNames entries={entries} />
      ) : (
        <ul className={`boards boards-${many}`}>
          {found.slice(0, most).map((entry) => (
            <li key={entry.id}>
              <StandingBoard
                entry={entry}
                read={plans.reads.get(entry.id)}
                mmPerM={mmPerM}
                stands={stands ? "stands" : "lies"}
                nowMs={nowMs}
                cameIntoView={plans.hurry}
              />
            </li>
          ))}
        </ul>
      )}
      {found.length > most && (
        <p>
          <button type="button" onClick={() => setMost(most + FIRST_SHOWN)}>
            {t`Show more boards`}
          </button>
        </p>
      )}
      {done.length === entries.length && (
        <Suspense>
          <ShopDays boards={done} />
        </Suspense>
      )}
    </div>
  );
}

function StateChoice({ shown, choose }: { shown: Shown; choose(shown: Shown): void }) {
  const t = useTell();
  const { reader } = useSettings();
  return (
    <Choice<Shown>
      label={t`State`}
      value={shown}
      choices={["all", ...BOARD_STATES, "barred"]}
      names={{
        all: t`all`,
        barred: t`not for water`,
        ...Object.fromEntries(BOARD_STATES.map((kind) => [kind, stateName(kind, reader)])),
      }}
      choose={choose}
    />
  );
}

interface Asked {
  readonly shown: Shown;
  readonly id: string;
  readonly plans: Plans;
  readonly nowMs: number;
}

/** A board that cannot be read, or is not worked out yet, has no state to be found by. */
function isShown({ shown, id, plans, nowMs }: Asked): boolean {
  if (shown === "all") return true;
  const read = plans.reads.get(id);
  if (read?.ok !== true) return false;
  return shown === "barred" ? read.plan.water.barred : boardStateAt(read.plan, nowMs).kind === shown;
}

function lengthOf({ length }: BoardEntry): number {
  const read = length === null ? null : parseQuantity(length, "length");
  return read?.ok === true ? read.value : 0;
}
