import { placeOnBoard } from "../../../board/Lay";
import type { Item, Point } from "../../../drawing/Drawing";
import { tell } from "../../../language/tell";
import { type FinSheet, placeOnPaper, type Shape } from "./FinSheet";

/** Below this the best-fit line is the stringer line to a pencil, metres. */
const SAME_M = 0.0002;
const BEYOND_TAIL_M = 0.014;

/** Both rails down to the tail's end, or its notch; open towards the nose, where the paper is cut off. */
export function edgeItems({ lay, edge, finset, develop }: FinSheet): readonly Item[] {
  const { crotchFromTailM } = finset.line;
  const left = edge.map(({ tapeM, leftM }) => placeOnBoard(lay, tapeM, leftM));
  const right = edge.map(({ tapeM, rightM }) => placeOnBoard(lay, tapeM, -rightM));
  const crotch = crotchFromTailM === null ? [] : [placeOnBoard(lay, develop(crotchFromTailM), 0)];
  return [
    { kind: "polyline", closed: false, pen: "thick", points: [...left.toReversed(), ...crotch, ...right] },
  ];
}

/** The stringer line, with its name at the top. */
export function stringerItems(sheet: FinSheet): readonly Item[] {
  const { lay, reachTapeM, reader } = sheet;
  const t = tell(reader);
  const top = placeOnBoard(lay, reachTapeM, 0);
  return [
    { kind: "line", pen: "centreline", from: placeOnBoard(lay, -BEYOND_TAIL_M, 0), to: top },
    alongUpright(t`stringer line`, {
      x: top.x + besideMm(isBestFitRight(sheet) ? "left" : "right"),
      y: top.y + 4,
    }),
  ];
}

/** The best-fit centreline, where it is another line than the stringer. */
export function bestFitItems(sheet: FinSheet): readonly Item[] {
  const { shape, reachTapeM, lay } = sheet;
  const t = tell(sheet.reader);
  const leftAt = (xM: number) => bestFitLeftM(shape, xM);
  const points = sheet.edge.map((_, i): Point => {
    // Straight places at even steps: the line's own bend on the paper is far below a pencil's width.
    const xM = (i / (sheet.edge.length - 1)) * reachTapeM;
    return placeOnPaper(sheet, xM, leftAt(xM));
  });
  if (Math.max(Math.abs(leftAt(0)), Math.abs(leftAt(reachTapeM))) < SAME_M) return [];
  const top = placeOnBoard(lay, reachTapeM, leftAt(reachTapeM));
  return [
    { kind: "polyline", closed: false, pen: "phantom", tone: "tape", points },
    {
      ...alongUpright(t`best-fit line`, {
        x: top.x + besideMm(isBestFitRight(sheet) ? "right" : "left"),
        y: top.y + 4,
      }),
      tone: "tape",
    },
  ];
}

/** How far left of the stringer the best-fit line runs. */
function bestFitLeftM({ symmetry, lengthM }: Shape, xM: number): number {
  return symmetry.centrelineShiftM + Math.tan(symmetry.centrelineSkewRad) * (xM - lengthM / 2);
}

/** On the paper and at its top, where LEFT is at the reader's right: the two lines' names stand on their outer sides. */
const isBestFitRight = ({ shape, reachTapeM }: FinSheet): boolean => bestFitLeftM(shape, reachTapeM) >= 0;

/** From a line to the foot of a name that reads upwards beside it. */
const besideMm = (side: "left" | "right"): number => (side === "left" ? -1.5 : 5);

/** The straightedge across the tail tips: the paper is laid to it, and distances from the tail start there. */
export function tailTipItems({ lay, edge, reader }: FinSheet): readonly Item[] {
  const t = tell(reader);
  const [tail] = edge;
  const outM = Math.max(tail?.leftM ?? 0, tail?.rightM ?? 0) + 0.03;
  const [from, to] = [placeOnBoard(lay, 0, outM), placeOnBoard(lay, 0, -outM)];
  return [
    { kind: "line", pen: "thin", tone: "graphite", from, to },
    {
      kind: "text",
      role: "note",
      anchor: "middle",
      sizeMm: 3.2,
      at: { x: (from.x + to.x) / 2, y: from.y + 18 },
      text: t`straightedge across the tail tips: all distances from the tail start here`,
    },
  ];
}

function alongUpright(text: string, at: Point) {
  return {
    kind: "text",
    role: "note",
    anchor: "end",
    sizeMm: 3.2,
    turnRad: -Math.PI / 2,
    at,
    text,
  } as const;
}
