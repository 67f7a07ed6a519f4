import { formatProblems } from "@lapline/contract";
import { useEffect, useState } from "react";
import { type KeptBoard, readBoard } from "../api/boardClient";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { BoardSheet } from "./BoardSheet";
import { planOf } from "./planOf";

type Opening =
  | { readonly kind: "opening" }
  | { readonly kind: "failed"; readonly why: string }
  | { readonly kind: "open"; readonly kept: KeptBoard };

/** One board, fetched and opened. */
export default function BoardPage({ id }: { id: string }) {
  const [opening, setOpening] = useState<Opening>({ kind: "opening" });
  useEffect(() => {
    let current = true;
    readBoard(id).then(
      (kept) => current && setOpening({ kind: "open", kept }),
      (error: unknown) =>
        current &&
        setOpening({ kind: "failed", why: String(error instanceof Error ? error.message : error) }),
    );
    return () => {
      current = false;
    };
  }, [id]);
  if (opening.kind === "opening") return <main className="page" aria-busy="true" />;
  if (opening.kind === "failed") return <NotOpened why={opening.why} />;
  const read = planOf(opening.kept.text);
  if (!read.ok) return <NotOpened why={formatProblems(read.problems)} />;
  return <BoardSheet id={id} opened={read} revision={opening.kept.revision} />;
}

function NotOpened({ why }: { why: string }) {
  const t = useTell();
  return (
    <main className="page">
      <h1>{t`This board cannot be opened`}</h1>
      <p className="tape tape-blocker">{why}</p>
      <p>
        <PageLink to="/">{t`All boards`}</PageLink>
      </p>
    </main>
  );
}
