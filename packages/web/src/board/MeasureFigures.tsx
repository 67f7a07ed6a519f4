import { count, length, type Plan, volume } from "@lapline/engine";
import { widthWords } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { Amount } from "../shared/Amount";
import { type FigureEntry, Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";

type Shape = NonNullable<Plan["shape"]>;

/** What a board is known by: length, widths, thickness, and how much it holds by the tape and by the scale. */
export function MeasureFigures({ plan, shape }: { plan: Plan; shape: Shape }) {
  const { reader } = useSettings();
  const widths = shape.widths.map((width): FigureEntry => {
    const { name, where } = widthWords(width, reader);
    return { name, of: length(width.widthM), note: <Fractions text={where} />, minor: true };
  });
  return (
    <Figures
      entries={[
        { name: "length", of: length(shape.lengthTapeM), note: "by tape" },
        {
          name: "widest",
          of: length(shape.widthMaxM),
          note: (
            <>
              <Amount of={length(shape.widthMaxFromTailM)} /> from the tail
            </>
          ),
        },
        ...widths,
        { name: "thickest", of: length(shape.thicknessMaxM) },
        {
          name: "volume",
          of: volume(shape.volumeM3),
          note: (
            <>
              <Amount of={volume(shape.volumeLowM3)} /> to <Amount of={volume(shape.volumeHighM3)} />
            </>
          ),
        },
        ...(plan.byWeight === null ? [] : [weightEntry(plan.byWeight)]),
      ]}
    />
  );
}

function weightEntry(byWeight: NonNullable<Plan["byWeight"]>): FigureEntry {
  const { volumeM3, volumeLowM3, volumeHighM3, deckFullness } = byWeight;
  return {
    name: "volume by the scale",
    minor: true,
    of: volume(volumeM3),
    note: (
      <>
        <Amount of={volume(volumeLowM3)} /> to <Amount of={volume(volumeHighM3)} />
        <br />
        {deckFullness === null ? (
          "no deck would agree"
        ) : (
          <>
            deck fullness <Amount of={count(deckFullness)} /> agrees
          </>
        )}
      </>
    ),
  };
}
