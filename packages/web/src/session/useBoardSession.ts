import { useEffect, useSyncExternalStore } from "react";
import type { BoardSession, SessionView } from "./SessionView";
import { sessionOf } from "./sessions";

/**
 * The board's session and what it shows now. Every page of a board asks for it by the board's id and gets the same one, so that
 * going from the board to the Bench and back keeps what was typed, what can be undone and what waits to be sent.
 */
export function useBoardSession(id: string): { readonly session: BoardSession; readonly view: SessionView } {
  const session = sessionOf(id);
  const view = useSyncExternalStore(session.subscribe, session.view);
  useEffect(() => {
    session.send();
  }, [session]);
  return { session, view };
}
