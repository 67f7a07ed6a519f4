import type { Plan } from "@lapline/engine";
import { filmBarsChart } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";

/** The film's budget as bars; the table of films by zone stands beside it. */
export function FilmBarsView({ plan }: { plan: Plan }) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback((widthMm: number) => filmBarsChart(plan, { reader, widthMm }), [plan, reader]);
  return (
    <SheetDrawing
      title={t`${plan.name}, film budget by zone`}
      desc={t`Film, what each paper takes and what is left; the figures stand in the table above.`}
      draw={draw}
    />
  );
}
