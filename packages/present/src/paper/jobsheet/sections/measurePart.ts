import type { Plan } from "@lapline/engine";
import { planDrawing } from "../../../board/planDrawing";
import { profileDrawing } from "../../../board/profileDrawing";
import { symmetrySentences } from "../../../words/symmetrySentences";
import { widthWords } from "../../../words/widthWords";
import { besidePiece } from "../../sheet/flow/besidePiece";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";
import { drawingPiece } from "../pieces/drawingPiece";
import { gridPiece } from "../pieces/gridPiece";
import { notePiece } from "../pieces/notePiece";
import { tapeHeading } from "../pieces/tapeHeading";
import type { SheetContext, SheetPart } from "../SheetContext";
import { foundPieces } from "./foundPieces";
import { missingPieces } from "./missingPieces";

type Shape = NonNullable<Plan["shape"]>;

const FIGURE_MM = 3.6;
const BESIDE_MM = 8;

/** The board's figures: drawn from below with both sides' readings, from the side, and in two tables. */
export function measurePart(context: SheetContext, withProfile: boolean): SheetPart {
  const { plan, t } = context;
  if (plan.shape === null)
    return {
      startsPage: false,
      pieces: [tapeHeading(t`Measure`, context), ...missingPieces(context, "shape")],
    };
  const figures = figureTable(plan.shape, context);
  const readings = readingTable(plan.shape, {
    ...context,
    widthMm: context.widthMm - figures.widthMm - BESIDE_MM,
  });
  const beside = { ...context, widthMm: figures.widthMm };
  return {
    startsPage: false,
    pieces: [
      ...drawingPieces(context, withProfile),
      besidePiece(
        [figures, ...symmetryPieces(plan.shape, beside)],
        readings === null ? [] : [readings],
        figures.widthMm + BESIDE_MM,
      ),
      ...foundPieces(context, ["survey", "shape"]),
    ],
  };
}

function drawingPieces(context: SheetContext, withProfile: boolean): readonly FlowPiece[] {
  const { plan, ledger, reader, widthMm, drawn, t } = context;
  const size = { reader, widthMm: widthMm * drawn, textMm: FIGURE_MM };
  const insetMm = (widthMm - size.widthMm) / 2;
  const above = planDrawing(plan, { ...size, face: "bottom", stands: false });
  const side = withProfile ? profileDrawing(plan, size) : null;
  return [
    ...(above === null
      ? []
      : [
          drawingPiece(above, { alt: t`The board from below.`, insetMm }),
          notePiece(ledger.drawn(above.notes), context),
        ]),
    ...(side === null
      ? []
      : [
          drawingPiece(side, { alt: t`The board from the side.`, insetMm }),
          notePiece(ledger.drawn(side.notes), context),
        ]),
  ];
}

function figureTable(shape: Shape, { ledger, t, reader, type, widthMm }: SheetContext) {
  const show = (path: string) => ledger.show(`shape.${path}`);
  const rows = [
    [t`length by tape`, show("lengthTapeM"), t`${show("lengthM")} straight`],
    [t`widest`, show("widthMaxM"), t`${show("widthMaxFromTailM")} from the tail`],
    ...shape.widths.map((width) => {
      const { name, where } = widthWords(width, reader);
      const path = `widths[${width.id}].widthM`;
      return [name, show(path), ledger.told(`shape.${path}`, where)];
    }),
    [t`thickest`, show("thicknessMaxM"), t`${show("thicknessMaxFromTailM")} from the tail`],
    [t`nose rocker`, show("noseRockerM"), ""],
    [t`tail rocker`, show("tailRockerM"), ""],
    [t`volume`, show("volumeM3"), t`${show("volumeLowM3")} to ${show("volumeHighM3")}`],
  ];
  return gridPiece(
    {
      columns: [
        { head: "", kind: "words" },
        { head: "", kind: "figure" },
        { head: "", kind: "words" },
      ],
      rows,
    },
    { type, widthMm: widthMm * 0.56 },
  );
}

const STATION = /^survey\.stations\[(\d+)\]\.(\w+)$/;
const KINDS = ["left", "right", "thickness", "rocker"] as const;

/** What was read, station by station, each side for itself. */
function readingTable(shape: Shape, { ledger, t, type, widthMm }: SheetContext): FlowPiece | null {
  const stations = new Map<string, Map<string, string>>();
  for (const { path } of shape.readings) {
    const [, station, kind = ""] = STATION.exec(path) ?? [];
    if (station === undefined) continue;
    const row = stations.get(station) ?? new Map<string, string>();
    stations.set(station, row.set(kind, `shape.readings[${path}]`));
  }
  if (stations.size === 0) return null;
  const kinds = KINDS.filter((kind) => [...stations.values()].some((row) => row.has(kind)));
  const heads = { left: t`LEFT`, right: t`RIGHT`, thickness: t`thick`, rocker: t`rocker` };
  const rows = [...stations.values()].map((row) => {
    const [any = ""] = row.values();
    return [
      ledger.bare(`${any}.fromTailM`),
      ...kinds.map((kind) => (row.has(kind) ? ledger.bare(`${row.get(kind)}.readM`) : "–")),
    ];
  });
  return gridPiece(
    {
      columns: [
        { head: t`from tail, straight`, kind: "figure" },
        ...kinds.map((kind) => ({ head: heads[kind], kind: "figure" }) as const),
      ],
      rows,
    },
    { type, widthMm },
  );
}

function symmetryPieces(shape: Shape, context: SheetContext): readonly FlowPiece[] {
  const { plan, reader, ledger } = context;
  if (shape.readings.length === 0) return [];
  return symmetrySentences(plan, reader, true).map((sentence) =>
    notePiece(ledger.told("shape.symmetry", sentence), context),
  );
}
