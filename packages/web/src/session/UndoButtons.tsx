import { useEffect } from "react";
import { useTell } from "../settings/useTell";
import type { BoardSession, OpenBoard } from "./SessionView";

interface UndoButtonsProps {
  readonly session: BoardSession;
  readonly board: OpenBoard;
}

/** Back and forward by a step, also with Ctrl-Z and Ctrl-Shift-Z; in a field of text those keys are the field's own. */
export function UndoButtons({ session, board }: UndoButtonsProps) {
  const t = useTell();
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const isInText = event.target instanceof Element && event.target.matches("input[type=text], textarea");
      if (isInText || event.key.toLowerCase() !== "z" || !(event.ctrlKey || event.metaKey) || event.altKey)
        return;
      event.preventDefault();
      if (event.shiftKey) session.redo();
      else session.undo();
    };
    document.addEventListener("keydown", press);
    return () => document.removeEventListener("keydown", press);
  }, [session]);
  return (
    <div className="undo">
      <button
        type="button"
        aria-disabled={!board.canUndo}
        onClick={session.undo}
        aria-keyshortcuts="Control+Z"
      >
        {t`Undo`}
      </button>
      <button
        type="button"
        aria-disabled={!board.canRedo}
        onClick={session.redo}
        aria-keyshortcuts="Control+Shift+Z"
      >
        {t`Redo`}
      </button>
    </div>
  );
}
