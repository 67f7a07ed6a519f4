import { useEffect } from "react";
import { useBoardSession } from "../session/useBoardSession";
import { useTell } from "../settings/useTell";
import { PageLink } from "../shared/PageLink";
import { BoardSheet } from "./BoardSheet";

/** One board, fetched and opened. */
export default function BoardPage({ id }: { id: string }) {
  const { session, view } = useBoardSession(id);
  if (view.kind === "opening") return <main className="page" aria-busy="true" />;
  if (view.kind === "failed") return <NotOpened why={view.why} isUnpaired={view.isUnpaired} />;
  return <BoardSheet id={id} session={session} board={view} />;
}

function NotOpened({ why, isUnpaired }: { why: string; isUnpaired: boolean }) {
  const t = useTell();
  useEffect(() => {
    if (isUnpaired) window.location.assign("/pair");
  }, [isUnpaired]);
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
