import { type ReactNode, useMemo } from "react";
import { useInTurn } from "./useInTurn";

interface InTurnProps<T> {
  readonly of: T;
  /** Makes what is shown of it, and of nothing else: it is made anew only when the turn of a new one comes. */
  children(shown: T): ReactNode;
}

/** A piece of the page that follows a value in a slice of time of its own. */
export function InTurn<T>({ of, children }: InTurnProps<T>): ReactNode {
  const shown = useInTurn(of);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it stays as it is until its turn comes
  return useMemo(() => children(shown), [shown]);
}
