import type { Plan } from "@lapline/engine";
import { profileDrawing } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";

/** The board from the side: rocker and thickness. */
export function ProfileView({ plan }: { plan: Plan }) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => profileDrawing(plan, { reader, widthMm }), [plan, reader]);
  return (
    <SheetDrawing
      title={t`${plan.name}, side view`}
      desc={t`Rocker and thickness along the stringer.`}
      draw={draw}
      zooms
      caption={t`From the side.`}
    />
  );
}
