import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { stopStrip } from "../pieces/stopStrip";
import type { SheetContext } from "../SheetContext";

/** What stops the build and what keeps the board out of the water, across the page. */
export function stopPieces(context: SheetContext): readonly FlowPiece[] {
  const { plan, ledger, t } = context;
  const blockers = plan.findings.flatMap((finding, i) =>
    finding.severity === "blocker" ? [ledger.sentence(`findings[${i}].says`, finding.says)] : [],
  );
  const { ready, says } = plan.water;
  return [
    ...(blockers.length > 0
      ? [stopStrip({ title: t`STOP: not to be built as it stands`, lines: blockers, isStop: true }, context)]
      : []),
    ...(ready
      ? []
      : [
          stopStrip(
            {
              title: t`Not for water yet`,
              lines: [
                says.map((phrase, i) => ledger.sentence(`water.says[${i}]`, phrase)).join(" · "),
              ].filter(Boolean),
              isStop: false,
            },
            context,
          ),
        ]),
  ];
}
