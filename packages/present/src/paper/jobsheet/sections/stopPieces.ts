import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { stopStrip } from "../pieces/stopStrip";
import type { SheetContext } from "../SheetContext";

/** What stops the build and what keeps the board out of the water, across the page. */
export function stopPieces(context: SheetContext): readonly FlowPiece[] {
  const { plan, ledger, t } = context;
  const blockers = plan.findings.flatMap((finding, i) =>
    finding.severity === "blocker" ? [ledger.sentence(`findings[${i}].says`, finding.says)] : [],
  );
  const { ready, barred, open } = plan.water;
  return [
    ...(blockers.length > 0
      ? [stopStrip({ title: t`STOP: not to be built as it stands`, lines: blockers, isStop: true }, context)]
      : []),
    ...(ready
      ? []
      : [
          stopStrip(
            {
              title: barred ? t`Not for water` : t`Not ready for water`,
              lines: [
                open.map(({ says }, i) => ledger.sentence(`water.open[${i}].says`, says)).join(" · "),
              ].filter(Boolean),
              isStop: false,
            },
            context,
          ),
        ]),
  ];
}
