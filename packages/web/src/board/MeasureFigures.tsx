import { count, length, type Plan, volume } from "@lapline/engine";
import { type Tell, tell, widthWords } from "@lapline/present";
import { useSettings } from "../settings/Settings";
import { type FigureEntry, Figures } from "../shared/Figures";
import { Fractions } from "../shared/Fractions";

type Shape = NonNullable<Plan["shape"]>;

/** What a board is known by: length, widths, thickness, and how much it holds by the tape and by the scale. */
export function MeasureFigures({ plan, shape }: { plan: Plan; shape: Shape }) {
  const { reader } = useSettings();
  const t = tell(reader);
  const widths = shape.widths.map((width, i): FigureEntry => {
    const { name, where } = widthWords(width, reader);
    return {
      name,
      of: length(width.widthM),
      why: `shape.widths[${i}].widthM`,
      note: <Fractions text={where} />,
      minor: true,
    };
  });
  return (
    <Figures
      entries={[
        { name: t`length`, of: length(shape.lengthTapeM), why: "shape.lengthTapeM", note: t`by tape` },
        {
          name: t`widest`,
          of: length(shape.widthMaxM),
          why: "shape.widthMaxM",
          note: <Fractions text={t`${length(shape.widthMaxFromTailM)} from the tail`} />,
        },
        ...widths,
        { name: t`thickest`, of: length(shape.thicknessMaxM), why: "shape.thicknessMaxM" },
        {
          name: t`volume`,
          of: volume(shape.volumeM3),
          why: "shape.volumeM3",
          note: t`${volume(shape.volumeLowM3)} to ${volume(shape.volumeHighM3)}`,
        },
        ...(plan.byWeight === null ? [] : [weightEntry(plan.byWeight, t)]),
      ]}
    />
  );
}

function weightEntry(byWeight: NonNullable<Plan["byWeight"]>, t: Tell): FigureEntry {
  const { volumeM3, volumeLowM3, volumeHighM3, deckFullness } = byWeight;
  return {
    name: t`volume by the scale`,
    minor: true,
    of: volume(volumeM3),
    why: "byWeight.volumeM3",
    note: (
      <>
        {t`${volume(volumeLowM3)} to ${volume(volumeHighM3)}`}
        <br />
        {deckFullness === null ? t`no deck would agree` : t`deck fullness ${count(deckFullness)} agrees`}
      </>
    ),
  };
}
