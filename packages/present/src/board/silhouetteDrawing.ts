import type { Plan } from "@lapline/engine";
import type { Drawing } from "../drawing/Drawing";
import { finBaseItem } from "./finMarkItems";
import { frameOf, type Lay, sheetSize } from "./Lay";
import { edgeItem, edgeOf, foamItem, stringerItem } from "./outlineItems";

/**
 * A board as it stands in the shed, deck to the reader and nose up, with nothing written on it: boards drawn with one
 * scale stand side by side at their true sizes. On a narrow sheet it lies, nose to the right. Null where the shape could not be built.
 * @param mmPerM millimetres of sheet for each metre of board
 */
export function silhouetteDrawing(
  plan: Plan,
  mmPerM: number,
  stands: "stands" | "lies" = "stands",
): Drawing | null {
  const { shape } = plan;
  if (shape === null) return null;
  const margin = 1;
  const leftMm = Math.max(...shape.outline.map((point) => point.leftM)) * mmPerM;
  const rightMm = Math.max(...shape.outline.map((point) => point.rightM)) * mmPerM;
  const lay: Lay = {
    stands: stands === "stands",
    face: "deck",
    mmPerM,
    uTotalMm: shape.lengthM * mmPerM + 2 * margin,
    vTotalMm: leftMm + rightMm + 2 * margin,
    uTailMm: margin,
    vStringerMm: margin + leftMm,
  };
  const edge = edgeOf(shape.outline, shape.notch, lay);
  return {
    ...sheetSize(lay),
    frame: frameOf(lay),
    notes: [],
    layers: [
      { id: "foam", items: [foamItem(edge)] },
      { id: "stringer", items: [stringerItem(shape, lay, 0)] },
      { id: "fins", items: (plan.finset?.marks ?? []).map((mark) => finBaseItem(mark, lay)) },
      { id: "outline", items: [edgeItem(edge)] },
    ],
  };
}
