import { length, type Plan } from "@lapline/engine";
import { readingsAlong, readingsChart, showQuantity, tell } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";

type Kind = Parameters<typeof readingsAlong>[1];

/** Thickness and rocker along the board, with how far each reading lies off the curve, drawn and as tables. */
export function ReadingsView({ plan }: { plan: Plan }) {
  const t = tell(useSettings().reader);
  return (
    <Fold title={t`Thickness and rocker against their readings`} isFolded>
      <OneCurve plan={plan} kind="thickness" />
      <OneCurve plan={plan} kind="rocker" />
    </Fold>
  );
}

function OneCurve({ plan, kind }: { plan: Plan; kind: Kind }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const draw = useCallback(
    (widthMm: number) => readingsChart(plan, kind, { reader, widthMm }),
    [plan, reader, kind],
  );
  const name = kind === "thickness" ? t`Thickness along the board` : t`Rocker along the board`;
  const rows = plan.shape === null ? [] : readingsAlong(plan.shape, kind);
  // Finer than the marks of an inch tape.
  const off = (valueM: number) => showQuantity(length(Math.abs(valueM)), { ...reader, units: "mm" });
  return (
    <>
      <SheetDrawing
        title={`${plan.name}, ${name}`}
        desc={t`The fitted curve with the readings; the figures stand in the table below.`}
        draw={draw}
        caption={`${name}.`}
      />
      <FactTable
        caption={name}
        captionUnseen
        heads={[t`place from the tail`, t`as read`, t`curve`, t`off by`]}
        rows={rows.map(({ fromTailM, readM, fittedM, residualM, suspect }, i) => ({
          id: String(i),
          name: <Amount of={length(fromTailM)} />,
          cells: [
            <Amount key="read" of={length(readM)} />,
            <Amount key="curve" of={length(fittedM)} />,
            suspect
              ? t`${off(residualM)}: read it again`
              : residualM < 0
                ? t`${off(residualM)} less`
                : t`${off(residualM)} more`,
          ],
        }))}
      />
    </>
  );
}
