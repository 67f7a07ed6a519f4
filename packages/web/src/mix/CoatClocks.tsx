import { duration, fraction, type Plan, temperature } from "@lapline/engine";
import { filmClockDrawing, gelBandDrawing } from "@lapline/present";
import { useCallback } from "react";
import { SheetDrawing } from "../drawing/SheetDrawing";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";

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
  const { clock, heat } = coat;
  if (clock === null) return null;
  return (
    <div className="two-clocks">
      <div>
        <h4>The cup</h4>
        <GelBand clock={clock} mix={mix} name={name} />
        {heat !== null && <Heat heat={heat} />}
      </div>
      <div>
        <h4>The film on the board</h4>
        <FilmClock clock={clock} name={name} />
        <Started coat={coat} />
        <p className="quiet">
          {clock.recoatUntilS === null
            ? "Over wax the next coat bonds only to a sanded face."
            : "Once recoat has closed, sand it dull, dust it off, then coat."}
        </p>
      </div>
    </div>
  );
}

function GelBand({ clock, mix, name }: { clock: Clock; mix: Mix; name: string }) {
  const { reader } = useSettings();
  const untilS = Math.max(...mix.coats.map((each) => each.clock?.potGelHighS ?? 0)) * 1.05;
  const draw = useCallback(
    (widthMm: number) => gelBandDrawing(clock, { reader, widthMm, untilS }),
    [clock, reader, untilS],
  );
  return (
    <SheetDrawing
      title={`${name}: when the cup goes off`}
      desc="The band in which the cup gels, from the hardener going in."
      draw={draw}
    />
  );
}

const LEFT_STANDING = {
  mild: "A cup left standing sheds its heat.",
  warm: "A cup left standing warms up: pour it out at once.",
  hot: "A cup left standing runs hot: pour it out at once, what is over into a flat pan outdoors.",
} as const;

function Heat({ heat }: { heat: NonNullable<MixCoat["heat"]> }) {
  return (
    <p className="quiet">
      {LEFT_STANDING[heat.warning]} It cools in <Amount of={duration(heat.coolingS)} />, and never gets above{" "}
      <Amount of={temperature(heat.boundK)} /> by its own heat, a bound and no forecast.
    </p>
  );
}

function FilmClock({ clock, name }: { clock: Clock; name: string }) {
  const { reader } = useSettings();
  const draw = useCallback(
    (widthMm: number) => filmClockDrawing(clock, { reader, widthMm }),
    [clock, reader],
  );
  return (
    <SheetDrawing
      title={`${name}: the film's clock`}
      desc="From the last cup's hardener on, each stage from its early to its late end."
      draw={draw}
    />
  );
}

/** What the record says: when it was mixed, and how fingertips moved its clock. */
function Started({ coat: { startedAt, paceRatio } }: { coat: MixCoat }) {
  if (startedAt === null) return null;
  return (
    <p>
      Counted from {startedAt.replace("T", " ")}, as recorded
      {paceRatio !== null && (
        <>
          ; by fingertip it takes <Amount of={fraction(paceRatio)} /> of the model's time
        </>
      )}
      .
    </p>
  );
}
