import type { Plan } from "@lapline/engine";
import type { Drawing, Item, Point } from "../drawing/Drawing";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { type FilmRow, filmLevels, filmRows } from "./filmRows";
import { frameOf, type Lay, placeOnBoard, placeOnSheet, sheetSize, uOf, vOf } from "./Lay";
import { edgeItem, edgeOf, stringerItem } from "./outlineItems";

type Shape = NonNullable<Plan["shape"]>;

interface FilmDrawingOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  /** Nose up on the sheet instead of to the right. */
  readonly stands: boolean;
  readonly textMm?: number;
}

const LENGTH_AT_MOST_MM = 200;
const UM = 1e6;

/**
 * The deck with the film that the papers leave, as lines of equal film with their numbers in micrometres: figures at the rails stand
 * beside them, the one in the middle for the flat. Where none is left the rail is ruled aslant.
 * @returns null without shape or film budget
 */
export function filmDrawing(plan: Plan, options: FilmDrawingOptions): Drawing | null {
  const { shape, sanding } = plan;
  if (shape === null || sanding === null) return null;
  const t = tell(options.reader);
  const textMm = options.textMm ?? 3.5;
  const lay = layFilm(shape, { ...options, textMm });
  const rows = filmRows(plan);
  const edge = edgeOf(shape.outline, shape.notch, lay);
  const flatM = sanding.zones.find(({ id }) => id === "deck")?.remainingM ?? 0;
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [
      t`Deck up. Film left after the last paper, in micrometres; between rail and flat it is drawn evenly over the lap's width.`,
      ...(rows.some(({ edgeM }) => edgeM < 0) ? [t`Ruled aslant: through.`] : []),
    ],
    layers: [
      {
        id: "film",
        items: [{ kind: "hatch", hatch: "resin", points: [...edge.left, ...edge.right, ...edge.crotch] }],
      },
      { id: "through", items: throughItems(rows, lay) },
      { id: "stringer", items: [stringerItem(shape, lay, 1)] },
      { id: "contours", items: contourItems(rows, lay, textMm) },
      { id: "outline", items: [edgeItem(edge)] },
      { id: "figures", items: figureItems(rows, { lay, textMm, flatM, lengthM: shape.lengthM }) },
      { id: "worst", items: worstItems(plan, rows, { lay, textMm }) },
    ],
  };
}

function layFilm(shape: Shape, { widthMm, stands, textMm }: Required<FilmDrawingOptions>): Lay {
  const leftM = Math.max(...shape.outline.map((point) => point.leftM));
  const rightM = Math.max(...shape.outline.map((point) => point.rightM));
  const marginMm = textMm * (stands ? 3.2 : 2.6);
  const endMm = textMm;
  const mmPerM = stands
    ? Math.min((widthMm - 2 * marginMm) / (leftM + rightM), LENGTH_AT_MOST_MM / shape.lengthM)
    : (widthMm - 2 * endMm) / shape.lengthM;
  const acrossMm = (leftM + rightM) * mmPerM + 2 * marginMm;
  const spareMm = stands ? (widthMm - acrossMm) / 2 : 0;
  return {
    stands,
    face: "deck",
    mmPerM,
    uTotalMm: shape.lengthM * mmPerM + 2 * endMm,
    vTotalMm: stands ? widthMm : acrossMm,
    uTailMm: endMm,
    vStringerMm: spareMm + marginMm + leftM * mmPerM,
  };
}

/** Where a film of that much lies on a row: so far in from the rail; null where the row has none. */
function placeOf(row: FilmRow, levelM: number, lay: Lay): Point | null {
  const share = (levelM - row.edgeM) / (row.flatM - row.edgeM);
  if (!(share >= 0 && share <= 1)) return null;
  const insideM = Math.max(row.halfWidthM - share * row.bandM, 0);
  return placeOnBoard(lay, row.fromTailM, row.sign * insideM);
}

/** The lines of one film on one side, each ending on the rail where the film there is as thick. */
function runsOf(side: readonly FilmRow[], levelM: number, lay: Lay): readonly (readonly Point[])[] {
  const runs: Point[][] = [];
  let run: Point[] | null = null;
  for (const [i, row] of side.entries()) {
    const place = placeOf(row, levelM, lay);
    const before = side[i - 1];
    const meets = before === undefined ? null : edgePlace(before, row, levelM, lay);
    if (place !== null) {
      if (run === null) {
        run = meets === null ? [] : [meets];
        runs.push(run);
      }
      run.push(place);
    } else if (run !== null) {
      if (meets !== null) run.push(meets);
      run = null;
    }
  }
  return runs.filter((points) => points.length > 1);
}

/** Where between two rows the rail itself has that film; null where it has not. */
function edgePlace(a: FilmRow, b: FilmRow, levelM: number, lay: Lay): Point | null {
  const share = (levelM - a.edgeM) / (b.edgeM - a.edgeM);
  if (!(share >= 0 && share <= 1)) return null;
  const between = (from: number, to: number) => from + share * (to - from);
  return placeOnBoard(lay, between(a.fromTailM, b.fromTailM), a.sign * between(a.halfWidthM, b.halfWidthM));
}

function contourItems(rows: readonly FilmRow[], lay: Lay, textMm: number): readonly Item[] {
  const levels = filmLevels(rows);
  return ([1, -1] as const).flatMap((sign) => {
    const side = rows.filter((row) => row.sign === sign);
    return levels.flatMap((levelM, k): readonly Item[] => {
      const lines = runsOf(side, levelM, lay).map(
        (points): Item => ({ kind: "polyline", closed: false, pen: "thin", points, tone: "graphite" }),
      );
      return sign === 1 && lines.length > 0
        ? [...lines, ...labelItems({ levelM, k, side, lay, textMm })]
        : lines;
    });
  });
}

/** The line's number, led off it towards the stringer, each a few rows on from the one before so that none cover each other. */
function labelItems(of: {
  readonly levelM: number;
  readonly k: number;
  readonly side: readonly FilmRow[];
  readonly lay: Lay;
  readonly textMm: number;
}): readonly Item[] {
  const { levelM, k, side, lay, textMm } = of;
  const with_ = side.filter((row) => placeOf(row, levelM, lay) !== null);
  const row = with_[Math.min(Math.floor(with_.length * 0.25) + 2 * k, with_.length - 1)];
  const from = row === undefined ? null : placeOf(row, levelM, lay);
  if (row === undefined || from === null) return [];
  const insideM = row.halfWidthM - row.bandM;
  const vMm = vOf(lay, insideM) + textMm * 0.4;
  const to = placeOnSheet(lay, uOf(lay, row.fromTailM), vMm);
  const at = placeOnSheet(lay, uOf(lay, row.fromTailM), vMm + textMm * (lay.stands ? 0.4 : 1));
  return [
    { kind: "line", pen: "thin", from, to },
    {
      kind: "text",
      at: lay.stands ? { x: at.x, y: at.y + textMm * 0.35 } : at,
      text: String(Math.round(levelM * UM)),
      sizeMm: textMm * 0.85,
      anchor: lay.stands ? "start" : "middle",
      role: "figure",
    },
  ];
}

/** The strip at the rail where nothing is left. */
function throughItems(rows: readonly FilmRow[], lay: Lay): readonly Item[] {
  return ([1, -1] as const).flatMap((sign) => {
    const side = rows.filter((row) => row.sign === sign);
    return side.flatMap((row, i): readonly Item[] => {
      const next = side[i + 1];
      if (next === undefined || (row.edgeM >= 0 && next.edgeM >= 0)) return [];
      const meets = edgePlace(row, next, 0, lay);
      const outer = [row, next].flatMap((each) =>
        each.edgeM < 0 ? [placeOnBoard(lay, each.fromTailM, each.sign * each.halfWidthM)] : (meets ?? []),
      );
      const inner = [row, next].flatMap((each) => (each.edgeM < 0 ? (placeOf(each, 0, lay) ?? []) : []));
      return [{ kind: "hatch", hatch: "proud", points: [...outer, ...inner.toReversed()], tone: "lead" }];
    });
  });
}

const EVERY = 3;

function figureItems(
  rows: readonly FilmRow[],
  of: { readonly lay: Lay; readonly textMm: number; readonly flatM: number; readonly lengthM: number },
): readonly Item[] {
  const { lay, textMm, flatM, lengthM } = of;
  const figure = { kind: "text", sizeMm: textMm, role: "figure" } as const;
  const beside = rows
    .filter((row) => row.number % EVERY === 1)
    .map((row): Item => {
      const beyond = row.sign === 1 ? -1 : 1;
      const vMm = vOf(lay, row.sign * row.halfWidthM) + beyond * textMm * (row.edgeM < 0 ? 1 : 0.5);
      const down = !lay.stands && row.sign === -1 ? textMm * 0.75 : 0;
      const at = placeOnSheet(lay, uOf(lay, row.fromTailM), vMm + down);
      const anchor = lay.stands ? (row.sign === 1 ? "end" : "start") : "middle";
      return {
        ...figure,
        at: lay.stands ? { x: at.x, y: at.y + textMm * 0.35 } : at,
        anchor,
        text: String(Math.round(row.edgeM * UM)).replace("-", "−"),
        ...(row.edgeM < 0 ? { tone: "lead" as const } : {}),
      };
    });
  const middle = placeOnSheet(
    lay,
    uOf(lay, lengthM * 0.62),
    vOf(lay, 0) + (lay.stands ? textMm : textMm * 1.6),
  );
  return [
    ...beside,
    { ...figure, at: middle, anchor: lay.stands ? "start" : "middle", text: String(Math.round(flatM * UM)) },
  ];
}

/** A ring about the thinnest place. */
function worstItems(
  { sanding }: Plan,
  rows: readonly FilmRow[],
  { lay, textMm }: { readonly lay: Lay; readonly textMm: number },
): readonly Item[] {
  const row = rows.find(({ id }) => id === sanding?.worst?.place);
  if (row === undefined) return [];
  const centre = placeOnBoard(lay, row.fromTailM, row.sign * row.halfWidthM);
  return [
    { kind: "arc", centre, radiusMm: textMm * 0.8, fromRad: 0, toRad: Math.PI, pen: "thick", tone: "lead" },
    {
      kind: "arc",
      centre,
      radiusMm: textMm * 0.8,
      fromRad: Math.PI,
      toRad: 2 * Math.PI,
      pen: "thick",
      tone: "lead",
    },
  ];
}
