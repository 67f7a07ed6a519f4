import { type Board, type Influence, walkSensitivity } from "@lapline/engine";
import { useEffect, useState } from "react";

/** Longest that the page is kept from answering, but for a single plan that takes longer. */
const SLICE_MS = 8;

/** What would change a number most, worked out in slices while the page stays quick; null until it is. */
export function useSensitivity(board: Board, path: string): readonly Influence[] | null {
  const [found, setFound] = useState<{ board: Board; path: string; influences: readonly Influence[] } | null>(
    null,
  );
  useEffect(() => {
    const walk = walkSensitivity(board, path);
    const work = () => {
      const untilMs = performance.now() + SLICE_MS;
      do {
        const { done, value } = walk.next();
        if (done === true) return setFound({ board, path, influences: value });
      } while (performance.now() < untilMs);
      timer = setTimeout(work, 0);
    };
    let timer = setTimeout(work, 0);
    return () => clearTimeout(timer);
  }, [board, path]);
  return found !== null && found.board === board && found.path === path ? found.influences : null;
}
