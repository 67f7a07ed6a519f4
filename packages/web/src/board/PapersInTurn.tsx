import { memo } from "react";
import { PapersPart } from "../papers/PapersPart";
import type { Draft } from "./Draft";
import { useDraftOfPart } from "./useDraftOfPart";

const Papers = memo(PapersPart);

interface PapersInTurnProps {
  /** The board's. */
  readonly id: string;
  readonly draft: Draft;
  readonly isSaved: boolean;
}

/** The papers of the board as it is shown; whether it is saved is told at once. */
export function PapersInTurn({ id, draft, isSaved }: PapersInTurnProps) {
  const { file, good } = useDraftOfPart(draft, "papers");
  return <Papers id={id} file={file} board={good.board} plan={good.plan} isSaved={isSaved} />;
}
