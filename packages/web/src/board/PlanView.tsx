import type { Plan } from "@lapline/engine";
import { planDrawing, symmetrySentences } from "@lapline/present";
import { useCallback, useState } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { TickTouch } from "./TickTouch";

/** Narrower than this the board stands on the sheet instead of lying. */
const LIES_FROM_MM = 150;

/** The board seen from above or below along its tape. */
export function PlanView({ plan }: { plan: Plan }) {
  const t = useTell();
  const { reader } = useSettings();
  const [face, setFace] = useState<"deck" | "bottom">("deck");
  const draw = useCallback(
    (widthMm: number) => planDrawing(plan, { reader, face, widthMm, stands: widthMm < LIES_FROM_MM }),
    [plan, reader, face],
  );
  if (plan.shape === null) return null;
  return (
    <TickTouch plan={plan} draw={draw}>
      <SheetDrawing
        title={face === "deck" ? t`${plan.name}, plan view, deck up` : t`${plan.name}, plan view, bottom up`}
        desc={t`Outline along a tape from the tail. ${symmetrySentences(plan, reader).join(" ")} The readings stand in the table below.`}
        draw={draw}
        zooms
        caption={
          <button
            type="button"
            className="plain"
            onClick={() => setFace(face === "deck" ? "bottom" : "deck")}
          >{t`turn it over`}</button>
        }
      />
    </TickTouch>
  );
}
