import type { Plan } from "@lapline/engine";
import { gelPointsDrawing } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";

type MixResin = NonNullable<Plan["mix"]>["resins"][number];

/** A resin's gel points, where they contradict each other: to see which one to read again. */
export function GelPoints({ resin }: { resin: MixResin }) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback(
    (widthMm: number) => gelPointsDrawing(resin, { reader, widthMm }),
    [resin, reader],
  );
  const isOdd = resin.points.some((point) => point.isOdd);
  if (!isOdd && (resin.points.length === 0 || resin.exponent !== null)) return null;
  return (
    <div className="gel-points">
      <h3>{t`Gel points of ${resin.name}`}</h3>
      <SheetDrawing title={t`Gel points of ${resin.name}`} desc={t`Gel time over temperature.`} draw={draw} />
    </div>
  );
}
