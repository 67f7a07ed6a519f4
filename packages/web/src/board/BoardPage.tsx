import { useBoardSession } from "../session/useBoardSession";
import { BoardSheet } from "./BoardSheet";
import { NotOpened } from "./NotOpened";

/** One board, fetched and opened. */
export default function BoardPage({ id }: { id: string }) {
  const { session, view } = useBoardSession(id);
  if (view.kind === "opening") return <main className="page" aria-busy="true" />;
  if (view.kind === "failed") return <NotOpened why={view.why} isUnpaired={view.isUnpaired} />;
  return <BoardSheet id={id} session={session} board={view} />;
}
