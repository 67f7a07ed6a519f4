import { sortFindings } from "../../../words/sortFindings";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { tapeNote } from "../pieces/tapeNote";
import type { SheetContext } from "../SheetContext";

/** What was found in some stages, on tape where it concerns: warnings, then notes. Blockers stand at the head of the Sheet. */
export function foundPieces(context: SheetContext, stages: readonly string[]): readonly FlowPiece[] {
  const { plan, ledger, notes, t } = context;
  const lines = sortFindings(plan.findings)
    .filter(({ code, severity }) => severity !== "blocker" && stages.includes(code.split(".")[0] ?? ""))
    .filter(({ code }) => !code.endsWith(".not-built"))
    .filter(({ severity }) => notes || severity === "warning")
    .map((finding) => {
      const text = ledger.sentence(`findings[${plan.findings.indexOf(finding)}].says`, finding.says);
      const isWarning = finding.severity === "warning";
      return { text: isWarning ? t`Warning: ${text}` : text, isWarning };
    });
  return lines.length === 0 ? [] : [tapeNote(lines, context)];
}
