import type { Plan } from "@lapline/engine";
import { profileDrawing } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";

/** The board from the side: rocker and thickness. */
export function ProfileView({ plan }: { plan: Plan }) {
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => profileDrawing(plan, { reader, widthMm }), [plan, reader]);
  return (
    <SheetDrawing
      title={`${plan.name}, side view`}
      desc="Rocker and thickness along the stringer."
      draw={draw}
      caption="From the side."
    />
  );
}
