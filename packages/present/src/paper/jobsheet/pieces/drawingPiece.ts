import type { Drawing } from "../../../drawing/Drawing";
import type { FlowPiece } from "../../sheet/flow/FlowPiece";

/** A drawing in its place on the page, so far in from the left. */
export function drawingPiece(
  drawing: Drawing,
  {
    alt,
    insetMm = 0,
    gapMm = 3,
  }: { readonly alt: string; readonly insetMm?: number; readonly gapMm?: number },
): FlowPiece {
  return {
    heightMm: drawing.heightMm,
    gapMm,
    place: ({ x, y }) => ({
      tag: "Figure",
      alt: [alt, ...drawing.notes].join(" "),
      items: drawing.layers.flatMap(({ items }) => items),
      at: { x: x + insetMm, y },
    }),
  };
}
