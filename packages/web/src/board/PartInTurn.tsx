import { type ReactNode, useMemo } from "react";
import type { Draft } from "./Draft";
import { useDraftOfPart } from "./useDraftOfPart";

interface PartInTurnProps {
  /** The section's; what is typed within it is shown at once. */
  readonly id: string;
  readonly draft: Draft;
  /** Makes the part of it, and of nothing else that changes. */
  children(draft: Draft): ReactNode;
}

/** A part of the page that is made anew when its turn comes, and not with every key. */
export function PartInTurn({ id, draft, children }: PartInTurnProps): ReactNode {
  const shown = useDraftOfPart(draft, id);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it stays as it is until its turn comes
  return useMemo(() => children(shown), [shown]);
}
