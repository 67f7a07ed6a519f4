import { length, type Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { DrawingOptions } from "../drawing/DrawingOptions";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { chooseExaggeration } from "./chooseExaggeration";
import { nearestPoint } from "./nearestPoint";
import { END_ROOM } from "./planLayout";

type Shape = NonNullable<Plan["shape"]>;

const HEIGHT_ROOM_MM = 28;
const HEIGHT_STEPS = [3, 2];

/**
 * The board from the side with the nose to the right, on the straightedge that touches it at half length: rocker and
 * thickness, heights larger than life by a stated factor. Null where the shape could not be built.
 */
export function profileDrawing(plan: Plan, options: DrawingOptions): Drawing | null {
  const { shape } = plan;
  if (shape === null) return null;
  const t = tell(options.reader);
  const textMm = options.textMm ?? 3.5;
  const mmPerM = (options.widthMm - 2 * END_ROOM) / shape.lengthM;
  const tallestM = Math.max(...shape.profile.map((point) => point.rockerM + point.thicknessM));
  const heightTimes = chooseExaggeration(tallestM * mmPerM, HEIGHT_ROOM_MM, HEIGHT_STEPS);
  const top = textMm * 4.4;
  const ground = top + tallestM * mmPerM * heightTimes;
  const place = (fromTailM: number, upM: number): Point => ({
    x: END_ROOM + fromTailM * mmPerM,
    y: ground - upM * mmPerM * heightTimes,
  });
  const bottom = shape.profile.map((point) => place(point.fromTailM, point.rockerM));
  const deck = shape.profile.map((point) => place(point.fromTailM, point.rockerM + point.thicknessM));
  const edge = [...bottom, ...deck.toReversed()];
  return {
    widthMm: options.widthMm,
    heightMm: ground + 3,
    frame: {
      origin: place(0, 0),
      alongMmPerM: { x: mmPerM, y: 0 },
      acrossMmPerM: { x: 0, y: -mmPerM * heightTimes },
    },
    notes: [
      t`On the straightedge that touches at half length; the line inside is the widest of the rail.`,
      ...(heightTimes === 1 ? [] : [t`Heights drawn ${heightTimes} times larger than lengths.`]),
    ],
    layers: [
      { id: "foam", items: [{ kind: "hatch", hatch: "foam", points: edge }] },
      { id: "rail", items: [railLine(shape, place)] },
      {
        id: "straightedge",
        items: [{ kind: "line", pen: "thin", from: place(0, 0), to: place(shape.lengthM, 0) }],
      },
      { id: "outline", items: [{ kind: "polyline", closed: true, pen: "thick", points: edge }] },
      { id: "dimensions", items: dimensionItems(shape, { place, textMm, reader: options.reader }) },
    ],
  };
}

type Place = (fromTailM: number, upM: number) => Point;

/** The rail's widest line as seen from the side. */
function railLine(shape: Shape, place: Place): Item {
  return {
    kind: "polyline",
    closed: false,
    pen: "thin",
    points: shape.profile.map((point) => place(point.fromTailM, point.apexM)),
  };
}

function dimensionItems(
  shape: Shape,
  { place, textMm, reader }: { place: Place; textMm: number; reader: Reader },
): readonly Item[] {
  const { noseRockerM, tailRockerM, thicknessMaxM, thicknessMaxFromTailM, lengthM } = shape;
  const thickestRockerM = nearestPoint(shape.profile, thicknessMaxFromTailM)?.rockerM ?? 0;
  const under = place(thicknessMaxFromTailM, thickestRockerM);
  const over = place(thicknessMaxFromTailM, thickestRockerM + thicknessMaxM);
  const upright = { kind: "dimension", measures: "y", sizeMm: textMm } as const;
  const show = (valueM: number): string => showQuantity(length(valueM), reader);
  return [
    ...blankUnder(show(thicknessMaxM), under, { textMm, upMm: under.y - over.y }),
    {
      ...upright,
      from: place(0, 0),
      to: place(0, tailRockerM),
      lineAt: place(0, 0).x - 5,
      text: show(tailRockerM),
    },
    {
      ...upright,
      from: place(lengthM, 0),
      to: place(lengthM, noseRockerM),
      lineAt: place(lengthM, 0).x + 8,
      text: show(noseRockerM),
    },
    {
      ...upright,
      from: under,
      to: over,
      lineAt: under.x,
      text: show(thicknessMaxM),
      extend: false,
      takenMm: CLEAR_MM,
    },
  ];
}

/** The thickness stands between deck and bottom only where so much of them stays free; otherwise over the deck. */
const CLEAR_MM = 5;

/**
 * Nothing is drawn under the thickness where it stands in the middle of its upright line: the rail's line runs through there.
 */
function blankUnder(
  text: string,
  foot: Point,
  { textMm, upMm }: { readonly textMm: number; readonly upMm: number },
): readonly Item[] {
  const wideMm = estimateTextWidthMm(text, textMm);
  if (upMm < wideMm + CLEAR_MM) return [];
  const half = wideMm / 2 + 0.5;
  const [left, right] = [foot.x - 1.2 - textMm * 0.8, foot.x - 0.4];
  const middle = foot.y - upMm / 2;
  return [
    {
      kind: "hatch",
      hatch: "blank",
      points: [
        { x: left, y: middle - half },
        { x: right, y: middle - half },
        { x: right, y: middle + half },
        { x: left, y: middle + half },
      ],
    },
  ];
}
