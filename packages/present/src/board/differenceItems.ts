import type { Plan } from "@lapline/engine";
import type { Item, Point } from "../drawing/Drawing";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { chooseExaggeration } from "./chooseExaggeration";
import { type Lay, placeOnBoard } from "./Lay";

type Shape = NonNullable<Plan["shape"]>;

export interface Difference {
  /** How many times the difference is drawn; 1 where it is drawn true. */
  readonly times: number;
  readonly items: readonly Item[];
  /** How to read it. */
  readonly note: string;
}

/** Room on the sheet for the largest difference. */
const ROOM_MM = 6;
/** Below this the two sides are one line to a builder: no shade is drawn. */
const SAME_M = 0.0002;

/**
 * How far the board is out of true, drawn at its true place and larger than life: on each side the other one mirrored, as
 * a faint line, and ruled where this side stands prouder; the best-fit centreline against the stringer by the same factor.
 */
export function buildDifference(shape: Shape, lay: Lay, reader: Reader): Difference {
  const t = tell(reader);
  const times = chooseExaggeration(Math.abs(shape.symmetry.worstM) * lay.mmPerM, ROOM_MM);
  return {
    times,
    note:
      times === 1
        ? t`Faint: the other side mirrored; ruled: where this side is fuller; differences true to size.`
        : t`Faint: the other side mirrored; ruled: where this side is fuller; differences drawn ${times} times.`,
    items: [
      ...proudAreas(shape, lay, times),
      mirroredLine(shape, lay, times, "left"),
      mirroredLine(shape, lay, times, "right"),
      bestFitLine(shape, lay, times),
    ],
  };
}

/** The edge of one side (signed to the left) and the other side mirrored onto it, its distance drawn `times` over. */
function edgePair(
  point: Shape["outline"][number],
  side: "left" | "right",
  times: number,
): { own: number; other: number } {
  const [ownM, otherM] = side === "left" ? [point.leftM, point.rightM] : [point.rightM, point.leftM];
  const sign = side === "left" ? 1 : -1;
  return { own: sign * ownM, other: sign * Math.max(0, ownM + times * (otherM - ownM)) };
}

function mirroredLine(shape: Shape, lay: Lay, times: number, side: "left" | "right"): Item {
  return {
    kind: "polyline",
    closed: false,
    pen: "thin",
    tone: "tape",
    points: shape.outline.map((point) =>
      placeOnBoard(lay, point.fromTailM, edgePair(point, side, times).other),
    ),
  };
}

function proudAreas(shape: Shape, lay: Lay, times: number): readonly Item[] {
  const areas: Item[] = [];
  for (const side of ["left", "right"] as const) {
    let run: Array<Shape["outline"][number]> = [];
    for (const point of shape.outline) {
      const proudM = side === "left" ? point.leftM - point.rightM : point.rightM - point.leftM;
      if (proudM > SAME_M) {
        run.push(point);
      } else {
        areas.push(...areaOf(run, lay, times, side));
        run = [];
      }
    }
    areas.push(...areaOf(run, lay, times, side));
  }
  return areas;
}

function areaOf(
  run: ReadonlyArray<Shape["outline"][number]>,
  lay: Lay,
  times: number,
  side: "left" | "right",
): readonly Item[] {
  if (run.length < 2) return [];
  const place = (which: "own" | "other"): Point[] =>
    run.map((point) => placeOnBoard(lay, point.fromTailM, edgePair(point, side, times)[which]));
  return [{ kind: "hatch", hatch: "proud", points: [...place("own"), ...place("other").reverse()] }];
}

function bestFitLine(shape: Shape, lay: Lay, times: number): Item {
  const { centrelineShiftM, centrelineSkewRad } = shape.symmetry;
  const leftAt = (fromTailM: number): number =>
    times * (centrelineShiftM + Math.tan(centrelineSkewRad) * (fromTailM - shape.lengthM / 2));
  return {
    kind: "line",
    pen: "phantom",
    tone: "tape",
    from: placeOnBoard(lay, 0, leftAt(0)),
    to: placeOnBoard(lay, shape.lengthM, leftAt(shape.lengthM)),
  };
}
