import { type Drawing, drawingToSvgNode } from "@lapline/present";
import { type ReactNode, useId, useMemo } from "react";
import { SvgTree } from "./SvgTree";
import { useWidthPx } from "./useWidthPx";

/** One millimetre of a drawing's sheet on the screen; figures of 3.5 mm are then as large as the text. */
const PX_PER_MM = 4;

interface SheetDrawingProps {
  readonly title: string;
  readonly desc: string;
  /** Makes the drawing for a sheet of this width. */
  readonly draw: (widthMm: number) => Drawing | null;
  /** Stands before the drawing's own notes. */
  readonly caption?: ReactNode;
}

/** A drawing as wide as its place, made anew for it, so that its figures keep their size on every screen. */
export function SheetDrawing({ title, desc, draw, caption }: SheetDrawingProps) {
  const [ref, widthPx] = useWidthPx<HTMLDivElement>();
  const idPrefix = useId();
  const shown = useMemo(() => {
    const drawing = widthPx === null || widthPx === 0 ? null : draw(widthPx / PX_PER_MM);
    if (drawing === null) return null;
    return { node: drawingToSvgNode(drawing, { title, desc, idPrefix }), notes: drawing.notes };
  }, [draw, widthPx, title, desc, idPrefix]);
  return (
    <figure className="sheet">
      <div ref={ref} className="sheet-drawing">
        {shown !== null && <SvgTree node={shown.node} />}
      </div>
      <figcaption>
        {caption} {shown?.notes.join(" ")}
      </figcaption>
    </figure>
  );
}
