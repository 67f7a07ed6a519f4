import { besidePiece } from "../../sheet/flow/besidePiece";
import { gridPiece } from "../pieces/gridPiece";
import { tapeHeading } from "../pieces/tapeHeading";
import type { SheetContext, SheetPart } from "../SheetContext";
import { foundPieces } from "./foundPieces";
import { missingPieces } from "./missingPieces";

const BESIDE_MM = 6;

/** What each part weighs by the plan, and blanks for what the scale says; after each coat they stand with its cups. */
export function weightPart(context: SheetContext): SheetPart {
  const { plan, t, widthMm } = context;
  const heading = tapeHeading(t`Weight`, context);
  const found = foundPieces(context, ["weight", "cost"]);
  if (plan.weight === null)
    return {
      startsPage: false,
      pieces: [
        heading,
        scaleTable(context),
        ...(found.length > 0 ? found : missingPieces(context, "weight")),
      ],
    };
  const parts = partTable({ ...context, widthMm: widthMm * 0.66 });
  const rightMm = widthMm - parts.widthMm - BESIDE_MM;
  return {
    startsPage: false,
    pieces: [
      heading,
      besidePiece([parts], [scaleTable({ ...context, widthMm: rightMm })], parts.widthMm + BESIDE_MM),
      ...found,
    ],
  };
}

function partTable({ ledger, t, type, widthMm }: SheetContext) {
  const show = (key: string) => ledger.show(`weight.${key}`);
  return gridPiece(
    {
      columns: [
        { head: t`by the plan`, kind: "words" },
        { head: "", kind: "figure" },
        { head: "", kind: "words" },
        { head: "", kind: "figure" },
      ],
      rows: [
        [t`foam`, show("foamKg"), t`boxes and plug`, show("fittingsKg")],
        [t`stringer`, show("stringerKg"), t`finished`, show("finishedKg")],
        [t`cloth`, show("clothKg"), t`at least`, show("finishedLowKg")],
        [t`resin, cured`, show("resinKg"), t`at most`, show("finishedHighKg")],
      ],
    },
    { type, widthMm },
  );
}

function scaleTable({ t, type, widthMm }: SheetContext) {
  const rows = [t`shaped blank`, t`sanded`, t`finished`].map((stage) => [stage, "", ""]);
  return gridPiece(
    {
      columns: [
        { head: t`on the scale`, kind: "words" },
        { head: t`weighs`, kind: "blank", leastMm: 16 },
        { head: t`date`, kind: "blank", leastMm: 11 },
      ],
      rows,
    },
    { type, widthMm },
  );
}
