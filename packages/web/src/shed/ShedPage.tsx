import { lazy, Suspense, useEffect, useState } from "react";
import { DevicesLink } from "../access/DevicesLink";
import { type BoardEntry, listBoards } from "../api/boardClient";
import { SettingsBar } from "../settings/SettingsBar";
import { useTell } from "../settings/useTell";
import { BoardNames } from "./BoardNames";

/** The boards' plans bring the engine along; their names are here before it. */
const BoardRow = lazy(() => import("./BoardRow"));

type Shed =
  | { readonly kind: "opening" }
  | { readonly kind: "failed"; readonly why: string }
  | { readonly kind: "open"; readonly entries: readonly BoardEntry[] };

/** All the boards in the shop, standing side by side at one scale. */
export function ShedPage() {
  const t = useTell();
  const name = t`The Shed`;
  const [shed, setShed] = useState<Shed>({ kind: "opening" });
  useEffect(() => {
    document.title = `${name} · Lapline`;
  }, [name]);
  useEffect(() => {
    let current = true;
    listBoards().then(
      (entries) => current && setShed({ kind: "open", entries }),
      (error: unknown) =>
        current && setShed({ kind: "failed", why: error instanceof Error ? error.message : String(error) }),
    );
    return () => {
      current = false;
    };
  }, []);
  return (
    <>
      <header className="top">
        <span className="home">Lapline</span>
        <SettingsBar />
      </header>
      <main className="page" aria-busy={shed.kind === "opening"}>
        <h1>{name}</h1>
        <DevicesLink />
        {shed.kind === "failed" && <p className="tape tape-blocker">{shed.why}</p>}
        {shed.kind === "open" && shed.entries.length === 0 && <p>{t`No boards yet.`}</p>}
        {shed.kind === "open" && shed.entries.length > 0 && (
          <Suspense fallback={<BoardNames entries={shed.entries} />}>
            <BoardRow entries={shed.entries} />
          </Suspense>
        )}
      </main>
    </>
  );
}
