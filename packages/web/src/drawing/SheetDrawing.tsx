import { lazy, type ReactNode, Suspense, useState } from "react";
import { useTell } from "../settings/useTell";
import { SvgTree } from "./SvgTree";
import { type Drawn, useDrawn } from "./useDrawn";
import { useWidthPx } from "./useWidthPx";

const ZoomDrawer = lazy(() => import("./ZoomDrawer"));

interface SheetDrawingProps extends Drawn {
  /** Stands before the drawing's own notes. */
  readonly caption?: ReactNode;
  /** Whether it can be opened to look at closely. */
  readonly zooms?: boolean;
}

/** A drawing as wide as its place, made anew for it, so that its figures keep their size on every screen. */
export function SheetDrawing({ caption, zooms = false, ...drawn }: SheetDrawingProps) {
  const t = useTell();
  const [ref, widthPx] = useWidthPx<HTMLDivElement>();
  const shown = useDrawn(drawn, widthPx);
  const [isClose, setClose] = useState(false);
  return (
    <>
      <figure className="sheet">
        <div ref={ref} className="sheet-drawing">
          {shown !== null && <SvgTree node={shown.node} />}
        </div>
        <figcaption>
          {zooms && (
            <button
              type="button"
              className="plain"
              aria-haspopup="dialog"
              aria-label={t`look closer: ${drawn.title}`}
              onClick={() => setClose(true)}
            >{t`look closer`}</button>
          )}
          {caption} {shown?.notes.join(" ")}
        </figcaption>
      </figure>
      {isClose && (
        <Suspense>
          <ZoomDrawer {...drawn} close={() => setClose(false)} />
        </Suspense>
      )}
    </>
  );
}
