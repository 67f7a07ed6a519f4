import { duration, type Plan, temperature } from "@lapline/engine";
import { gelOverTemperatureChart } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";
import { Amount } from "../shared/Amount";
import { FactTable } from "../shared/FactTable";
import { Fold } from "../shared/Fold";

type Mix = NonNullable<Plan["mix"]>;

interface GelOverTemperatureProps {
  readonly coat: Mix["coats"][number];
  readonly mix: Mix;
  readonly name: string;
}

/** A cup's band of gel in resin colder or warmer than planned, drawn and as a table. */
export function GelOverTemperature({ coat, mix, name }: GelOverTemperatureProps) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback(
    (widthMm: number) => gelOverTemperatureChart(coat, mix, { reader, widthMm }),
    [coat, mix, reader],
  );
  if (coat.gelBand.length < 2) return null;
  const title = t`${name}: the cup's gel over the temperature`;
  return (
    <Fold title={t`Colder or warmer`} isFolded isMadeOpen>
      <SheetDrawing
        title={title}
        desc={t`The band in which the cup gels, over the resin's temperature; the figures stand in the table below.`}
        draw={draw}
      />
      <FactTable
        caption={title}
        captionUnseen
        heads={[t`resin`, t`gels at the earliest`, t`about`, t`at the latest`]}
        rows={coat.gelBand.map(({ temperatureK, gelLowS, gelS, gelHighS }, i) => {
          const at = `mix.coats[${coat.id}].gelBand[${i}]`;
          return {
            id: String(i),
            name: <Amount of={temperature(temperatureK)} why={`${at}.temperatureK`} />,
            cells: [
              <Amount key="low" of={duration(gelLowS)} why={`${at}.gelLowS`} />,
              <Amount key="about" of={duration(gelS)} why={`${at}.gelS`} />,
              <Amount key="high" of={duration(gelHighS)} why={`${at}.gelHighS`} />,
            ],
          };
        })}
      />
    </Fold>
  );
}
