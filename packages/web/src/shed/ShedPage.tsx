import { lazy, Suspense, useCallback, useEffect, useState } from "react";
import { DevicesLink } from "../access/DevicesLink";
import { type BoardEntry, listBoards } from "../api/boardClient";
import { failureWords } from "../api/failureWords";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { PageTop } from "../shared/PageTop";
import { usePageTitle } from "../shared/usePageTitle";
import { BoardNames } from "./BoardNames";
import { PutAwayBoards } from "./PutAwayBoards";

/** The boards' plans bring the engine along; their names are here before it. */
const BoardRow = lazy(() => import("./BoardRow"));

type Shed =
  | { readonly kind: "opening" }
  | { readonly kind: "failed"; readonly why: unknown }
  | { readonly kind: "open"; readonly entries: readonly BoardEntry[] };

/** All the boards in the shop, standing side by side at one scale. */
export function ShedPage() {
  const t = useTell();
  const name = t`The Shed`;
  const [shed, setShed] = useState<Shed>({ kind: "opening" });
  usePageTitle(name);
  const open = useCallback(
    () =>
      listBoards().then(
        (entries) => setShed({ kind: "open", entries }),
        (why: unknown) => setShed({ kind: "failed", why }),
      ),
    [],
  );
  useEffect(() => {
    void open();
  }, [open]);
  return (
    <>
      <PageTop home={<span className="home">Lapline</span>} />
      <main className="page shed" aria-busy={shed.kind === "opening"}>
        <div className="shed-head">
          <h1>{name}</h1>
          <PageLink to="/new" className="new-board">{t`New board`}</PageLink>
          <PageLink to="/words" className="way">{t`Words`}</PageLink>
          <DevicesLink />
        </div>
        {shed.kind === "failed" && <p className="tape tape-blocker">{failureWords(shed.why, t)}</p>}
        {shed.kind === "open" && shed.entries.length === 0 && <Empty />}
        {shed.kind === "open" && shed.entries.length > 0 && (
          <Suspense fallback={<BoardNames entries={shed.entries} />}>
            <BoardRow entries={shed.entries} />
          </Suspense>
        )}
        {shed.kind === "open" && <PutAwayBoards cameBack={() => void open()} />}
      </main>
    </>
  );
}

function Empty() {
  const t = useTell();
  return (
    <p className="says">
      {t`No boards yet. Begin one by three questions, from a board file, or from a table of readings.`}
    </p>
  );
}
