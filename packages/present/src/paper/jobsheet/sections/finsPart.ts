import type { Plan } from "@lapline/engine";
import { finDrawing } from "../../../board/finDrawing";
import { besidePiece } from "../../sheet/flow/besidePiece";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { nameWords } from "../nameWords";
import { drawingPiece } from "../pieces/drawingPiece";
import { gridPiece } from "../pieces/gridPiece";
import { captionPiece, notePiece } from "../pieces/notePiece";
import { tapeHeading } from "../pieces/tapeHeading";
import type { SheetContext, SheetPart } from "../SheetContext";
import { finNotes } from "./finNotes";
import { foundPieces } from "./foundPieces";
import { missingPieces } from "./missingPieces";
import { tailStart } from "./tailStart";

type Finset = NonNullable<Plan["finset"]>;

const FIGURE_MM = 3.6;
const DRAWING_MM = 106;
const BESIDE_MM = 6;

/** The marking-out drawing with what must be known beside it, and its figures as a table. */
export function finsPart(context: SheetContext): SheetPart {
  const { plan, t } = context;
  const heading = tapeHeading(t`Fins: marking-out`, context);
  const { finset } = plan;
  if (finset === null || finset.marks.length === 0)
    return { startsPage: false, pieces: [heading, ...missingPieces(context, "finset")] };
  return {
    startsPage: true,
    pieces: [
      heading,
      ...drawnPieces(finset, context),
      markTable(finset, context),
      ...foundPieces(context, ["finset", "verify"]),
    ],
  };
}

/** The drawing, and beside it what to set out by and what is checked before the router. */
function drawnPieces(finset: Finset, context: SheetContext): readonly FlowPiece[] {
  const { plan, ledger, reader, widthMm, drawn, t } = context;
  const drawnMm = DRAWING_MM * drawn;
  const drawing = finDrawing(plan, { reader, widthMm: drawnMm, textMm: FIGURE_MM });
  const beside = { ...context, widthMm: widthMm - drawnMm - BESIDE_MM };
  const right = [
    ...finNotes(finset, context).map((text) => notePiece(text, beside)),
    ...checkPieces(finset, beside),
  ];
  if (drawing === null) return right;
  const left = [drawingPiece(drawing, { alt: t`The tail with the fins' marks.` })];
  return [besidePiece(left, right, drawnMm + BESIDE_MM), notePiece(ledger.drawn(drawing.notes), context)];
}

function markTable({ marks, line }: Finset, { ledger, reader, t, type, widthMm }: SheetContext): FlowPiece {
  const start = tailStart(line);
  const rows = marks.map(({ id, side }) => {
    const at = (path: string) => `finset.marks[${id}].${path}`;
    const tape = (path: string) => ledger.bare(at(path), "tape");
    return [
      nameWords(id, reader),
      tape(`trailing.${start.key}`),
      tape("trailing.fromCentrelineM"),
      tape("trailing.fromRailM"),
      tape(`leading.${start.key}`),
      tape("leading.fromCentrelineM"),
      side === "centre" ? "–" : ledger.bare(at("toeOverBaseM"), "fine"),
      ledger.show(at("toeRad")),
      ledger.show(at("cantRad")),
    ];
  });
  return gridPiece(
    {
      columns: [
        { head: t`fin`, kind: "name" },
        { head: t`trailing end: from ${start.word}`, kind: "figure" },
        { head: t`from line`, kind: "figure" },
        { head: t`from rail`, kind: "figure" },
        { head: t`leading end: from ${start.word}`, kind: "figure" },
        { head: t`from line`, kind: "figure" },
        { head: t`toe over base`, kind: "figure" },
        { head: t`toe`, kind: "figure" },
        { head: t`cant`, kind: "figure" },
      ],
      rows,
    },
    { type, widthMm },
  );
}

/** Before the router: both diagonals, and the pockets' sizes. */
function checkPieces(finset: Finset, context: SheetContext): readonly FlowPiece[] {
  const { t } = context;
  return [
    ...(finset.pairs.length === 0
      ? []
      : [captionPiece(t`Check diagonals, by taut tape`, context), diagonalTable(finset, context)]),
    ...(finset.verify.boxes.length === 0
      ? []
      : [captionPiece(pocketsTitle(context)[finset.verify.surface], context), pocketTable(finset, context)]),
  ];
}

const pocketsTitle = ({ t }: SheetContext): Readonly<Record<Finset["verify"]["surface"], string>> => ({
  foam: t`Pockets, deep from the foam`,
  laminate: t`Pockets, deep from the laminate`,
  fill: t`Pockets, deep from the fill coat`,
});

function diagonalTable({ pairs, line }: Finset, { ledger, reader, t, type, widthMm }: SheetContext) {
  const names = [
    ["nose-trailing", t`nose tip`],
    ["tail-trailing", line.crotchFromTailM === null ? t`tail's middle` : t`crotch`],
  ] as const;
  const rows = pairs.flatMap((pair) =>
    names.map(([id, name]) => {
      const at = `finset.pairs[${pair.id}].diagonals[${id}]`;
      return [
        nameWords(pair.id, reader),
        name,
        ledger.show(`${at}.leftTapeM`, "tape"),
        ledger.show(`${at}.rightTapeM`, "tape"),
      ];
    }),
  );
  return gridPiece(
    {
      columns: [
        { head: t`trailing marks`, kind: "words" },
        { head: t`from`, kind: "words" },
        { head: t`LEFT`, kind: "figure" },
        { head: t`RIGHT`, kind: "figure" },
      ],
      rows,
    },
    { type, widthMm },
  );
}

function pocketTable({ verify }: Finset, { ledger, reader, t, type, widthMm }: SheetContext) {
  const rows = verify.boxes.map(({ id, bits }) => {
    const at = `finset.verify.boxes[${id}]`;
    const bit = bits.find((each) => each.id === reader.units)?.diameterM ?? null;
    return [
      nameWords(id, reader),
      ledger.bare(`${at}.cutOut.lengthM`, "fine"),
      ledger.bare(`${at}.cutOut.widthM`, "fine"),
      ledger.bare(`${at}.cutOut.depthM`, "fine"),
      bit === null ? "–" : ledger.bare(`${at}.bits[${reader.units}].diameterM`, "fine"),
    ];
  });
  return gridPiece(
    {
      columns: [
        { head: "", kind: "words" },
        { head: t`long`, kind: "figure" },
        { head: t`wide`, kind: "figure" },
        { head: t`deep`, kind: "figure" },
        { head: t`bit at most`, kind: "figure" },
      ],
      rows,
    },
    { type, widthMm },
  );
}
