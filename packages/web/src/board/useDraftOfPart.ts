import { useMemo } from "react";
import { useInTurn } from "../shared/useInTurn";
import type { Draft } from "./Draft";
import { useAfterTyping } from "./useAfterTyping";

/**
 * What a part of the page shows: a field typed in it at once, and its plan in its turn; what is typed in another part when the keys
 * rest.
 */
export function useDraftOfPart(newest: Draft, id: string): Draft {
  const isHere = document.activeElement?.closest(`#${id}`) != null;
  const rested = useAfterTyping(newest);
  const shown = useInTurn(isHere ? newest : rested);
  return useMemo(() => (isHere ? { ...newest, good: shown.good } : shown), [isHere, newest, shown]);
}
