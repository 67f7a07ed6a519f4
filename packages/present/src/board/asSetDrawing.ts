import { length, type Plan } from "@lapline/engine";
import type { ArcItem, Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { formatTolerance } from "../words/formatTolerance";
import { chooseExaggeration } from "./chooseExaggeration";
import { type FinMark, finBaseItem, placeMark } from "./finMarkItems";
import { frameOf, type Lay, placeOnBoard, sheetSize } from "./Lay";
import { edgeOf, foamItem } from "./outlineItems";
import { layTail, openEdgeItems, setOutLineItem, sideNameItems } from "./tailView";

type Finset = NonNullable<Plan["finset"]>;
type AsSet = Finset["asSet"][number];
type End = "trailing" | "leading";

/** Room on the sheet for the largest error, at most and as a share of the sheet's width. */
const MOST_ROOM_MM = 16;
const ROOM_SHARE = 0.11;
const TIMES = [50, 30, 20, 15, 10, 8, 6, 5, 4, 3, 2] as const;
const MARGIN_MM = 4;

/**
 * The fins as they were measured over the fins as planned, bottom up, nose away: errors drawn larger than life by a stated
 * factor, each end with its tolerance as a circle of the same factor, and its error in figures. Null where nothing was
 * measured.
 */
export function asSetDrawing(plan: Plan, { reader, widthMm, textMm = 3.5 }: DrawingOptions): Drawing | null {
  const { shape, finset } = plan;
  const t = tell(reader);
  if (shape === null || finset === null || finset.asSet.length === 0) return null;
  const view = layTail(shape, finset, {
    widthMm,
    textMm,
    leftMm: MARGIN_MM,
    rightMm: MARGIN_MM,
    headLines: 0,
  });
  const { lay } = view;
  const largestM = Math.max(finset.toleranceM, ...finset.asSet.flatMap(errorSizes));
  const roomMm = Math.min(MOST_ROOM_MM, widthMm * ROOM_SHARE);
  const times = chooseExaggeration(largestM * lay.mmPerM, roomMm, TIMES);
  const edge = edgeOf(view.tail.outline, shape.notch, lay);
  const fins = finset.marks.map((mark) => ({
    mark,
    asSet: finset.asSet.find(({ id }) => id === mark.id),
  }));
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [
      t`Bottom up, nose away: LEFT is on your right hand.`,
      times === 1
        ? t`Thin: as planned; thick: as measured, errors drawn true to size; a circle is the tolerance, ${formatTolerance(finset.toleranceM, reader)}.`
        : t`Thin: as planned; thick: as measured, errors drawn ${times} times; a circle is the tolerance, ${formatTolerance(finset.toleranceM, reader)}.`,
    ],
    layers: [
      { id: "foam", items: [foamItem(edge)] },
      { id: "line", items: [setOutLineItem(finset, view)] },
      { id: "planned", items: fins.map(({ mark }) => plannedItem(mark, lay)) },
      {
        id: "as-set",
        items: fins.flatMap(({ mark, asSet }) =>
          asSet === undefined ? [] : asSetItems(finset, { mark, asSet, lay, times }),
        ),
      },
      { id: "outline", items: openEdgeItems(edge, view) },
      {
        id: "across",
        items: fins.flatMap(({ mark, asSet }) =>
          asSet === undefined ? [] : figureItems({ mark, asSet, lay, times, reader, textMm, roomMm }),
        ),
      },
      { id: "words", items: [...sideNameItems(view, textMm, reader)] },
    ],
  };
}

const errorSizes = ({ trailingErrorM, leadingErrorM }: AsSet): number[] =>
  [trailingErrorM, leadingErrorM].filter((errorM) => errorM !== null);

const plannedItem = (mark: FinMark, lay: Lay): Item => ({
  ...finBaseItem(mark, lay),
  pen: "thin",
  tone: "graphite",
});

interface Measured {
  readonly mark: FinMark;
  readonly asSet: AsSet;
  readonly lay: Lay;
  readonly times: number;
}

function asSetItems(finset: Finset, measured: Measured): readonly Item[] {
  const { mark, asSet, lay, times } = measured;
  const radiusMm = finset.toleranceM * times * lay.mmPerM;
  const circle = (end: End): ArcItem => ({
    kind: "arc",
    pen: "thin",
    tone: "graphite",
    centre: placeMark(mark, end, lay),
    radiusMm,
    fromRad: 0,
    toRad: 2 * Math.PI - 1e-6,
  });
  const tone = asSet.withinTolerance ? "sea" : "lead";
  return [
    circle("trailing"),
    circle("leading"),
    {
      kind: "line",
      pen: "thick",
      tone,
      from: placeAsSet(finset.line.skewRad, measured, "trailing"),
      to: placeAsSet(finset.line.skewRad, measured, "leading"),
    },
  ];
}

/** Where an end was measured, its error drawn so many times over; where it was not read in a direction, as planned. */
function placeAsSet(skewRad: number, { mark, asSet, lay, times }: Measured, end: End): Point {
  const alongM = times * (asSet[`${end}AlongM`] ?? 0);
  const outM = times * (asSet[`${end}AcrossM`] ?? 0);
  const leftM = (mark.side === "right" ? -1 : 1) * outM;
  const { at } = mark[end];
  return placeOnBoard(
    lay,
    at.xM + alongM * Math.cos(skewRad) - leftM * Math.sin(skewRad),
    at.yM + alongM * Math.sin(skewRad) + leftM * Math.cos(skewRad),
  );
}

/** Each end's error beside it, towards the line; a centre fin's on the reader's right. */
function figureItems({
  mark,
  asSet,
  lay,
  reader,
  textMm,
  roomMm,
}: Measured & { reader: Reader; textMm: number; roomMm: number }): readonly Item[] {
  return (["trailing", "leading"] as const).flatMap((end): Item[] => {
    const errorM = asSet[`${end}ErrorM`];
    if (errorM === null) return [];
    const at = placeMark(mark, end, lay);
    const inward = mark.side === "left" ? -1 : 1;
    return [
      {
        kind: "text",
        at: { x: at.x + inward * (roomMm + 1), y: at.y + textMm * 0.35 },
        text: showQuantity(length(errorM, "fine"), reader),
        sizeMm: textMm,
        anchor: inward < 0 ? "end" : "start",
        role: "figure",
      },
    ];
  });
}
