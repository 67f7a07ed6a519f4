import { duration, fraction, type Plan, temperature } from "@lapline/engine";
import { filmClockDrawing, gelBandDrawing } from "@lapline/present";
import { useCallback } from "react";
import { GelOverTemperature } from "../charts/GelOverTemperature";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { useTell } from "../settings/useTell";

type Mix = NonNullable<Plan["mix"]>;
type MixCoat = Mix["coats"][number];
type Clock = NonNullable<MixCoat["clock"]>;

interface CoatClocksProps {
  readonly coat: MixCoat;
  readonly mix: Mix;
  readonly name: string;
}

/** The two clocks of a coat, kept apart: the cup's, and the film's on the board. */
export function CoatClocks({ coat, mix, name }: CoatClocksProps) {
  const t = useTell();
  const { clock, heat } = coat;
  if (clock === null) return null;
  return (
    <div className="two-clocks">
      <div>
        <h4>{t`The cup`}</h4>
        <GelBand clock={clock} mix={mix} name={name} />
        {heat !== null && <Heat heat={heat} />}
        <GelOverTemperature coat={coat} mix={mix} name={name} />
      </div>
      <div>
        <h4>{t`The film on the board`}</h4>
        <FilmClock clock={clock} name={name} />
        <Started coat={coat} />
        <p className="quiet">
          {clock.recoatUntilS === null
            ? t`Over wax the next coat bonds only to a sanded face.`
            : t`Once recoat has closed, sand it dull, dust it off, then coat.`}
        </p>
      </div>
    </div>
  );
}

function GelBand({ clock, mix, name }: { clock: Clock; mix: Mix; name: string }) {
  const t = useTell();
  const { reader } = useSettings();
  const untilS = Math.max(...mix.coats.map((each) => each.clock?.potGelHighS ?? 0)) * 1.05;
  const draw = useCallback(
    (widthMm: number) => gelBandDrawing(clock, { reader, widthMm, untilS }),
    [clock, reader, untilS],
  );
  return (
    <SheetDrawing
      title={t`${name}: when the cup goes off`}
      desc={t`The band in which the cup gels, from the hardener going in.`}
      draw={draw}
    />
  );
}

function Heat({ heat }: { heat: NonNullable<MixCoat["heat"]> }) {
  const t = useTell();
  const standing = {
    mild: t`A cup left standing sheds its heat.`,
    warm: t`A cup left standing warms up: pour it out at once.`,
    hot: t`A cup left standing runs hot: pour it out at once, what is over into a flat pan outdoors.`,
  };
  return (
    <p className="quiet">
      {standing[heat.warning]}{" "}
      {t`It cools in ${duration(heat.coolingS)}, and never gets above ${temperature(heat.boundK)} by its own heat, a bound and no forecast.`}
    </p>
  );
}

function FilmClock({ clock, name }: { clock: Clock; name: string }) {
  const t = useTell();
  const { reader } = useSettings();
  const draw = useCallback(
    (widthMm: number) => filmClockDrawing(clock, { reader, widthMm }),
    [clock, reader],
  );
  return (
    <SheetDrawing
      title={t`${name}: the film's clock`}
      desc={t`From the last cup's hardener on, each stage from its early to its late end.`}
      draw={draw}
    />
  );
}

/** What the record says: when it was mixed, and how fingertips moved its clock. */
function Started({ coat: { startedAt, paceRatio } }: { coat: MixCoat }) {
  const t = useTell();
  if (startedAt === null) return null;
  return (
    <p>
      {paceRatio === null
        ? t`Counted from ${startedAt}, as recorded.`
        : t`Counted from ${startedAt}, as recorded; by fingertip it takes ${fraction(paceRatio)} of the model's time.`}
    </p>
  );
}
