import type { Plan } from "@lapline/engine";
import {
  type Drawing,
  drawingToSvgNode,
  LAID_SKIN_TIMES,
  laidSentence,
  laidSkinDrawing,
  silhouetteDrawing,
  tell,
} from "@lapline/present";
import { useId, useMemo } from "react";
import { SvgTree } from "../drawing/SvgTree";
import { useSettings } from "../settings/Settings";

interface BoardDrawingProps {
  readonly plan: Plan;
  readonly mmPerM: number;
  readonly stands: "stands" | "lies";
}

const STRIP_MM = 9;

/** A board's silhouette with its skin strip beside it: the layers that are laid so far. */
export function BoardDrawing({ plan, mmPerM, stands }: BoardDrawingProps) {
  const { reader } = useSettings();
  const idPrefix = useId();
  const drawn = useMemo(() => {
    const t = tell(reader);
    const nodeOf = (drawing: Drawing | null, words: { title: string; desc: string }, part: string) =>
      drawing === null ? null : drawingToSvgNode(drawing, { ...words, idPrefix: `${idPrefix}${part}` });
    const outline = { title: plan.name, desc: t`Outline, deck up, nose up.` };
    const skin = {
      title: t`${plan.name}, the skin so far`,
      desc: t`${laidSentence(plan, reader)}. Thickness drawn ${LAID_SKIN_TIMES} times; what is still to come is an empty line.`,
    };
    return {
      outline: nodeOf(silhouetteDrawing(plan, mmPerM, stands), outline, "b"),
      skin: nodeOf(laidSkinDrawing(plan, { widthMm: STRIP_MM }), skin, "s"),
    };
  }, [plan, mmPerM, stands, idPrefix, reader]);
  return (
    <>
      {drawn.outline !== null && (
        <span className="silhouette">
          <SvgTree node={drawn.outline} />
        </span>
      )}
      {drawn.skin !== null && (
        <span className="skin-strip">
          <SvgTree node={drawn.skin} />
        </span>
      )}
    </>
  );
}
