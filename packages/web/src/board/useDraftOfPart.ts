import { useMemo, useRef } from "react";
import { useInTurn } from "../shared/useInTurn";
import type { Draft } from "./Draft";
import { useAfterTyping } from "./useAfterTyping";

/**
 * What a part of the page shows: a field typed in it at once, and its plan in its turn; what is typed in another part when the keys
 * rest.
 */
export function useDraftOfPart(newest: Draft, id: string): Draft {
  const isHere = document.activeElement?.closest(`#${id}`) != null;
  const rested = useAfterTyping(newest, isHere);
  const shown = useInTurn(rested);
  // What was typed here stands until its turn has come, wherever the cursor has gone meanwhile.
  const own = useRef<Draft | null>(null);
  if (isHere) own.current = newest;
  else if (shown === rested) own.current = null;
  const typed = own.current;
  return useMemo(() => (typed === null ? shown : { ...typed, good: shown.good }), [typed, shown]);
}
