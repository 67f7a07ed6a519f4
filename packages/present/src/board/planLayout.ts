import type { Plan } from "@lapline/engine";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { formatBareLength } from "./formatBareLength";
import type { Face, Lay } from "./Lay";
import { sideReadings } from "./sideReadings";

type Shape = NonNullable<Plan["shape"]>;

export interface PlanDrawingOptions {
  readonly reader: Reader;
  /** Which face is seen. Bottom up, the surfer's left lies at the reader's right. */
  readonly face: Face;
  /** Nose up on the sheet (away from the reader), or lying with the nose to the right. */
  readonly stands: boolean;
  /** The sheet's width, millimetres; the board is drawn as large as fits, but one that stands no longer than a screen. */
  readonly widthMm: number;
  /** Em size of figures. */
  readonly textMm?: number;
}

export interface PlanLayout {
  readonly lay: Lay;
  readonly textMm: number;
  /** Figures of readings stand at these distances across the sheet, on the low and on the high side of the board. */
  readonly lowRowMm: number;
  readonly highRowMm: number;
  /** Readings turned to run across the board, where many would not fit along it. */
  readonly turned: boolean;
  readonly tapeMm: { readonly from: number; readonly to: number };
  readonly lengthLineMm: number;
  /** Baselines of the two sides' names where the board lies. */
  readonly wordsMm: { readonly low: number; readonly high: number };
}

const SLANT = 3.5;
const TAPE_GAP = 2;
export const DIMENSION_STEP = 7;
/** Room beyond both ends for the dimensions of widths; the side view keeps the same, so that the two stand under each other. */
export const END_ROOM = 3 * DIMENSION_STEP;
/** Standing, there is one dimension beyond the nose, and the sides' names beyond that. */
const NOSE_ROOM_STANDING = DIMENSION_STEP + 7;
const LENGTH_AT_MOST_MM = 230;

/** Shares the sheet out between the board, its readings, the tape and the dimensions; see `PlanLayout`. */
export function planLayout(shape: Shape, options: PlanDrawingOptions): PlanLayout {
  const { stands, face, widthMm } = options;
  const room = planRoom(shape, options);
  const half = halfWidths(shape);
  const vFreeMm = widthMm - room.vLow - room.vHigh;
  const mmPerM = stands
    ? Math.min(vFreeMm / (half.left + half.right), LENGTH_AT_MOST_MM / shape.lengthM)
    : (widthMm - room.u) / shape.lengthM;
  const low = (face === "deck" ? half.left : half.right) * mmPerM;
  const high = (face === "deck" ? half.right : half.left) * mmPerM;
  const vSpare = stands ? (vFreeMm - low - high) / 2 : 0;
  const vStringerMm = vSpare + room.vLow + low;
  const edge = vStringerMm + high;
  const tapeFrom = edge + room.row + room.sideWord + TAPE_GAP;
  return {
    lay: {
      stands,
      face,
      mmPerM,
      uTotalMm: room.u + shape.lengthM * mmPerM,
      vTotalMm: stands ? widthMm : room.vLow + low + high + room.vHigh,
      uTailMm: END_ROOM,
      vStringerMm,
    },
    textMm: room.textMm,
    lowRowMm: vStringerMm - low - SLANT,
    highRowMm: edge + SLANT,
    turned: room.turned,
    tapeMm: { from: tapeFrom, to: tapeFrom + room.tapeWide },
    lengthLineMm: tapeFrom + room.tapeWide + DIMENSION_STEP - 1,
    wordsMm: { low: room.textMm, high: edge + room.row + room.textMm * 1.2 },
  };
}

/** What everything but the board takes of the sheet, along and across. */
function planRoom(shape: Shape, { stands, reader, widthMm, textMm = 3.5 }: PlanDrawingOptions) {
  const stations = Math.max(sideReadings(shape, "left").length, sideReadings(shape, "right").length);
  const readingWide = Math.max(
    ...shape.readings.map((reading) => estimateTextWidthMm(formatBareLength(reading.readM, reader), textMm)),
    textMm,
  );
  const u = END_ROOM + (stands ? NOSE_ROOM_STANDING + 2 * textMm : END_ROOM);
  const turned = !stands && (readingWide + 1.5) * stations > 0.9 * (widthMm - u);
  const row = stations > 0 ? SLANT + (stands || turned ? readingWide : textMm) + 1.5 : 2;
  const acrossFigures = reader.units === "mm" ? 2.2 : 1.6;
  const tapeWide = textMm * (stands ? acrossFigures : 1.9);
  const sideWord = stands ? 0 : textMm * 1.7;
  const vLow = row + sideWord;
  return {
    textMm,
    u,
    turned,
    row,
    tapeWide,
    sideWord,
    vLow,
    vHigh: vLow + TAPE_GAP + tapeWide + DIMENSION_STEP + 1,
  };
}

function halfWidths(shape: Shape): { readonly left: number; readonly right: number } {
  return {
    left: Math.max(...shape.outline.map((point) => point.leftM)),
    right: Math.max(...shape.outline.map((point) => point.rightM)),
  };
}
