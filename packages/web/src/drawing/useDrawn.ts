import { type Drawing, drawingToSvgNode } from "@lapline/present";
import { useId, useMemo } from "react";

/** One millimetre of a drawing's sheet on the screen; figures of 3.5 mm are then as large as the text. */
export const PX_PER_MM = 4;

export interface Drawn {
  readonly title: string;
  readonly desc: string;
  /** Makes the drawing for a sheet of this width. */
  readonly draw: (widthMm: number) => Drawing | null;
}

/** A drawing made anew for a place of this width; null while that is not known, and where there is nothing to draw. */
export function useDrawn({ title, desc, draw }: Drawn, widthPx: number | null) {
  const idPrefix = useId();
  return useMemo(() => {
    const drawing = widthPx === null || widthPx === 0 ? null : draw(widthPx / PX_PER_MM);
    if (drawing === null) return null;
    return { node: drawingToSvgNode(drawing, { title, desc, idPrefix }), notes: drawing.notes };
  }, [draw, widthPx, title, desc, idPrefix]);
}
