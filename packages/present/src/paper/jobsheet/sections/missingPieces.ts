import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { notePiece } from "../pieces/notePiece";
import type { SheetContext } from "../SheetContext";

/** Why a stage of the plan is not there, in the words of the findings that say so; else that the blockers do. */
export function missingPieces(context: SheetContext, stage: string): readonly FlowPiece[] {
  const { plan, ledger, t } = context;
  const own = plan.findings.flatMap((finding, i) =>
    finding.code.startsWith(`${stage}.`) || finding.path === stage || finding.path.startsWith(`${stage}.`)
      ? [{ finding, path: `findings[${i}].says` }]
      : [],
  );
  const blockers = own.filter(({ finding }) => finding.severity === "blocker");
  const reasons = blockers.length > 0 ? blockers : own;
  if (reasons.length === 0) return [notePiece(t`Not worked out; see what stops the build.`, context)];
  return reasons.map(({ finding, path }) => notePiece(ledger.sentence(path, finding.says), context));
}
